using System.CommandLine;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Commands;

/// <summary><c>explain [TOPIC]</c>: prints a rule, the loss formula, an application, a class of fibre or a deviation; or lists them all.</summary>
internal sealed class ExplainCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        var topic = new Argument<string?>("TOPIC")
        {
            Description = "A rule's code such as P01, 'budget', an application such as 10GBASE-SR, a class of fibre such as OM4, 'deviations' or one of them such as other-cord; without it all are listed.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        Option<string> format = CommonOptions.Format("markdown");
        var command = new Command("explain",
            """
            Tell what a rule means, what an application or fibre allows, how losses are reckoned, how plants get built wrong.

            Examples:
              polaritymap explain
              polaritymap explain P01
              polaritymap explain D04 --format json
              polaritymap explain budget
              polaritymap explain 10GBASE-SR
              polaritymap explain OM4
              polaritymap explain deviations
              polaritymap explain other-cord
              polaritymap explain --format markdown > rules.md
            """) { topic, format };
        command.SetAction(parsed =>
        {
            string form = parsed.GetValue(format)!;
            bool json = form == "json";
            if (form == "markdown")
            {
                if (parsed.GetValue(topic) is not null)
                    throw new CallException("markdown is the form of the reference of all rules; leave the topic out");
                context.Out.Write(RuleReference.Text());
            }
            else if (parsed.GetValue(topic) is { } wanted)
            {
                ExplainTopic found = ExplainTopics.Find(wanted);
                if (json)
                    found.WriteJson(context.Out);
                else
                    found.WriteText(context);
            }
            else if (json)
            {
                RuleJson.Write(RuleCatalogue.All, context.Out);
            }
            else
            {
                RuleText.WriteList(context);
                ExplainTopics.WriteOthers(context);
            }

            return ExitStatus.Clean;
        });
        return command;
    }
}
