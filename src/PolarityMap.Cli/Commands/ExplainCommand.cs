using System.CommandLine;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Commands;

/// <summary><c>explain [CODE]</c>: prints a rule, or the list of rules.</summary>
internal sealed class ExplainCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        var code = new Argument<string?>("CODE") { Description = "A rule's code, such as P01; without it all rules are listed.", Arity = ArgumentArity.ZeroOrOne };
        Option<string> format = CommonOptions.Format();
        var command = new Command("explain",
            """
            Print what a rule means, why it matters, an example and what clears it.

            Examples:
              polaritymap explain
              polaritymap explain P01
              polaritymap explain D04 --format json
            """) { code, format };
        command.SetAction(parsed =>
        {
            bool json = parsed.GetValue(format) == "json";
            if (parsed.GetValue(code) is not { } wanted)
            {
                if (json)
                    RuleJson.Write(RuleCatalogue.All, context.Out);
                else
                    RuleText.WriteList(context);
                return ExitStatus.Clean;
            }

            if (RuleCatalogue.Find(wanted) is not { } rule)
            {
                string? near = NearestWord.Find(wanted, RuleCatalogue.All.Select(r => r.Code));
                throw new CallException($"there is no rule '{wanted}'; expected one of {string.Join(", ", RuleCatalogue.All.Select(r => r.Code))}"
                    + (near is null ? "" : $"; did you mean '{near}'?"));
            }

            if (json)
                RuleJson.Write([rule], context.Out);
            else
                RuleText.Write(rule, context);
            return ExitStatus.Clean;
        });
        return command;
    }
}
