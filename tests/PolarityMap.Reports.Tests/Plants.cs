using System.Collections.Concurrent;
using PolarityMap.Acceptance;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Observations;
using PolarityMap.Documents.Text;
using PolarityMap.Drawing.Views;
using PolarityMap.Reports.Pages;
using PolarityMap.Reports.Templates;
using Xunit;

namespace PolarityMap.Reports.Tests;

/// <summary>Plants to report on, from the gallery or written out.</summary>
internal static class Plants
{
    /// <summary>A plant whose every free text tries to be something else.</summary>
    public const string Hostile = """
        plant: "</title><evil-tag onload=evil()>{{ plant.site }} & 'q' \"q\" `"
        site: "<evil-tag src=x>"
        author: "=1+1"
        number: "--> ]]> </style></script><evil-tag>"
        revision: "&lt;evil-tag&gt;"
        networks:
          con: { colour: red }
          שלום: { colour: green, key: "<evil-tag>" }
        parts:
          SW(b): { kind: duplex interface, ports: 3, network: con, room: "</td><evil-tag>" }
          SW-R: { kind: duplex interface, ports: 3, network: con, note: "</script><evil-tag>" }
          שלום-1: { kind: duplex interface, network: שלום, room: "\" onclick=\"evil()" }
          LAMP: { kind: duplex interface, network: שלום }
          K-L: { kind: straight cassette, keys: opposed }
          K-R: { kind: straight cassette, keys: opposed }
          TRUNK: { kind: Type-A trunk, length: 30 m }
        runs:
          - SW(b)/1..3, A-to-B cord 2 m, K-L/1..3
          - K-L/rear, TRUNK, K-R/rear
          - K-R/1..3, A-to-B cord 2 m, SW-R/1..3
          - שלום-1/1, A-to-B cord 5 m, LAMP/1
        links:
          - SW(b)/1..3 to SW-R/1..3
          - שלום-1/1 to LAMP/1

        """;

    private static readonly ConcurrentDictionary<string, Lazy<ReportInput>> s_read = new(StringComparer.Ordinal);

    /// <summary>The documents of the gallery that reports are tried on, as paths in it.</summary>
    public static TheoryData<string> OfTheGallery { get; } =
    [
        "opera-house/plant.yaml", "opera-house/as-built.yaml", "methods/duplex-B.yaml",
        .. Directory.EnumerateFiles(Path.Combine(Repository.Gallery, "faults"), "*.yaml").Select(f => $"faults/{Path.GetFileName(f)}").Order(StringComparer.Ordinal),
    ];

    /// <summary>A plant of the gallery, read and traced once for all tests.</summary>
    public static ReportInput FromGallery(string path) => s_read.GetOrAdd(path, static p => new Lazy<ReportInput>(() => ReadAnew(p))).Value;

    public static ReportInput ReadAnew(string path) => Input(new Files(Repository.Gallery), path);

    public static ReportInput Written(string text) => Input(new Files(Repository.Gallery) { Written = text }, "plant.yaml");

    /// <summary>The same with what was seen of it, as a table has it.</summary>
    public static ReportInput Seen(ReportInput input, string table)
    {
        var problems = new ProblemList();
        SeenNotes notes = SeenFile.Read("seen.csv", System.Text.Encoding.UTF8.GetBytes("test,at,seen,value,note\n" + table), problems, allowOutside: false)?.Bind(input.Traced, problems)
            ?? throw new InvalidOperationException(problems.ToString());
        var context = new DeviationContext(input.Traced);
        LocateResult result = Locator.Locate(context, notes.Observations);
        return input with
        {
            Seen = new SeenInput(result, SuspectPlant.Of(context, result))
            {
                File = "seen.csv",
                Plan = result.Explanations.Count > 0 && !result.IsAsDescribed ? Locator.Plan(context, result) : null,
                Remarks = [.. notes.Remarks.Select(r => (r.Place, r.Text))],
            },
        };
    }

    public static string Page(ReportInput input) => ReportPage.Write(input, new TemplateFolder());

    private static ReportInput Input(Files files, string path)
    {
        var problems = new ProblemList();
        Plant plant = PlantDocument.Read(path, files, problems) ?? throw new InvalidOperationException(problems.ToString());
        CheckReport check = CheckReport.Of(TracedPlant.Of(plant));
        var schedules = new ScheduleInput(check.Traced, check.Context);
        var input = new ReportInput(check)
        {
            Document = Path.GetFileName(path),
            DocumentFolder = path[..^Path.GetFileName(path).Length],
            Schedules = [.. ScheduleCatalogue.All.Select(k => k.Of(schedules))],
        };
        return input with { Sheets = SheetSet.Of(input.View, ViewCatalogue.Find("strands")!) };
    }

    private sealed class Files(string folder) : IDocumentSource
    {
        public string? Written { get; init; }

        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            why = "";
            bytes = Written is null ? File.ReadAllBytes(Path.Combine(folder, path)) : System.Text.Encoding.UTF8.GetBytes(Written);
            return true;
        }

        public bool TryReadInside(string inside, string path, int maxBytes, out byte[] bytes, out string why) => TryRead(path, maxBytes, out bytes, out why);
    }
}
