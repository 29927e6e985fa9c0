using System.CommandLine;
using PolarityMap.Cli.Output;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Commands;

/// <summary><c>catalogue [PART]</c>: lists the built-in parts with their shapes in one line each, or draws one in full.</summary>
internal sealed class CatalogueCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        var part = new Argument<string?>("PART") { Description = "A kind or a built-in type, such as 'U1 cassette'; without it all are listed.", Arity = ArgumentArity.ZeroOrOne };
        Option<string> format = CommonOptions.Format();
        var command = new Command("catalogue",
            """
            List the built-in parts with their shapes, or draw the shape of one in text.

            A document may name any of them where it says what a part is, and change its attributes. A document's own types, and
            those of catalogue files that it includes, come before these.

            Examples:
              polaritymap catalogue
              polaritymap catalogue "U1 cassette"
              polaritymap catalogue "2x12 to 3x8 module"
            """) { part, format };
        command.SetAction(parsed =>
        {
            bool json = parsed.GetValue(format) == "json";
            IReadOnlyList<CataloguePart> all = CataloguePart.All();
            if (parsed.GetValue(part) is { } wanted)
            {
                CataloguePart? found = all.FirstOrDefault(p => string.Equals(p.Name, wanted, StringComparison.OrdinalIgnoreCase));
                if (found is null)
                {
                    string? near = NearestWord.Find(wanted, all.Select(p => p.Name));
                    throw new CallException($"there is no part '{wanted}' in the catalogue" + (near is null ? "; 'polaritymap catalogue' lists them" : $"; did you mean '{near}'?"));
                }

                if (json)
                    CatalogueJson.Write([found], context.Out);
                else
                    CatalogueText.Write(found, context);
            }
            else if (json)
            {
                CatalogueJson.Write(all, context.Out);
            }
            else
            {
                CatalogueText.WriteList(all, context);
            }

            return ExitStatus.Clean;
        });
        return command;
    }
}
