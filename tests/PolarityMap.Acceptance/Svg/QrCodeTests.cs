using System.Xml.Linq;
using PolarityMap.Acceptance.Gallery;
using PolarityMap.Acceptance.Renderers;
using Xunit;
using ZXing;
using ZXing.Common;

namespace PolarityMap.Acceptance.Svg;

/// <summary>The QR codes of the drawings, read by another library from pictures that two renderers make of them.</summary>
public sealed class QrCodeTests
{
    // Coarser than any office printer: what is read here is read from paper. A square of 0.4 mm has three dots.
    private const double DotsPerInch = 200;

    private const string Title = "QR code of the text ";

    private static readonly string[] s_withCodes = [.. MadeGallery.Now.Svgs.Where(s => MadeGallery.Now.Files[s].Contains(Title, StringComparison.Ordinal))];

    public static TheoryData<string> WithCodes => [.. s_withCodes];

    [Fact]
    public void Every_card_and_every_sheet_of_labels_has_codes()
    {
        IEnumerable<Figure> figures = GalleryIndex.Documents.SelectMany(d => d.Figures).Where(f => f.Options.Contains("card") || f.Options.Contains("labels"));
        string[] expected = [.. GalleryIndex.Documents.SelectMany(d => d.Figures.Intersect(figures).SelectMany(f => MadeGallery.Now.FilesOf(f)).Select(f => $"{d.Folder}/{f}")).Where(f => !f.EndsWith("labels-test.svg", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        Assert.Equal(expected, s_withCodes);
    }

    [Theory]
    [MemberData(nameof(WithCodes))]
    public void A_code_reads_as_the_text_that_it_is_said_to_hold_in_either_renderer(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        int width = (int)(sheet.Sheet.Width * DotsPerInch / 25.4), height = (int)(sheet.Sheet.Height * DotsPerInch / 25.4);
        string text = MadeGallery.Now.Files[svg];
        foreach (Picture picture in (Picture[])[LibrsvgRenderer.Render(text, width, height), SkiaRenderer.Render(text, width, height)])
        {
            foreach ((string said, Rect place) in Codes(sheet))
                Assert.Equal(said, Read(picture, place, DotsPerInch / 25.4));
        }
    }

    // ISO/IEC 18004: four squares free on each side; 0.4 mm a square is the least that is printed here.
    [Theory]
    [MemberData(nameof(WithCodes))]
    public void A_code_is_large_enough_and_nothing_but_it_stands_in_its_free_edge(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        foreach ((_, Rect place) in Codes(sheet))
        {
            Assert.True(place.Width >= 0.4 * (21 + 8) - DrawnSheet.Rounding && Math.Abs(place.Width - place.Height) < DrawnSheet.Rounding);
            Assert.All(sheet.Texts, t => Assert.False(t.Letters.Overlaps(place, 0.02), $"'{t.Content}' stands in the code at {place}"));
        }
    }

    // The text leads back: it is what 'trace' takes, and its way begins or ends there.
    [Theory]
    [MemberData(nameof(WithCodes))]
    public void The_text_of_a_code_is_an_address_that_trace_follows(string svg)
    {
        string document = Path.GetDirectoryName(svg)!.Contains("as-built", StringComparison.Ordinal) ? "opera-house/as-built.yaml" : "opera-house/plant.yaml";
        foreach (string said in Codes(DrawnSheet.Of(svg)).Select(c => c.Said).Distinct())
        {
            Outcome outcome = Product.Run(Repository.Gallery, "trace", document, said);
            Assert.Equal((0, ""), (outcome.Status, outcome.Error));
        }
    }

    [Theory]
    [InlineData("GRÖSSE-1")]
    [InlineData("Ελληνικά")]
    [InlineData("A+B #1 (x)~y_z.")]
    public void A_name_in_any_script_is_read_back(string name)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("codes-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "p.yaml"), $"plant: x\nparts:\n  {Quoted(name)}: duplex interface\n  SW: duplex interface\nruns:\n  - [{Quoted($"{name}/1")}, A-to-B cord 2 m, SW/1]\n");
            Outcome drawn = Product.Run(folder.FullName, "draw", "p.yaml", "--view", "labels", "--part", name, "-o", "labels.png", "--dpi", "300");
            Assert.Equal((0, ""), (drawn.Status, drawn.Error));
            using var image = new ImageMagick.MagickImage(Path.Combine(folder.FullName, "labels.png"));
            using ImageMagick.IPixelCollection<byte> pixels = image.GetPixels();
            var picture = new Picture((int)image.Width, (int)image.Height, pixels.ToByteArray(ImageMagick.PixelMapping.RGB)!);
            Assert.Equal($"{name}/1", Read(picture, new Rect(0, 0, picture.Width, picture.Height), 1));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Quoted(string text) => $"'{text}'";

    private static IEnumerable<(string Said, Rect Place)> Codes(DrawnSheet sheet) =>
        sheet.Root.Descendants().Where(e => e.Name.LocalName == "title" && e.Value.StartsWith(Title, StringComparison.Ordinal)).Select(title =>
        {
            XElement box = title.Parent!.Descendants().First(e => e.Name.LocalName == "rect");
            double Number(string name) => double.Parse(box.Attribute(name)!.Value, System.Globalization.CultureInfo.InvariantCulture);
            return (title.Value[Title.Length..], new Rect(Number("x"), Number("y"), Number("width"), Number("height")));
        });

    private static string? Read(Picture picture, Rect place, double dots)
    {
        int left = (int)(place.X * dots), top = (int)(place.Y * dots);
        int width = Math.Min((int)Math.Ceiling(place.Width * dots), picture.Width - left), height = Math.Min((int)Math.Ceiling(place.Height * dots), picture.Height - top);
        var grey = new byte[width * height];
        for (int y = 0; y < height; y++)
        {
            for (int x = 0; x < width; x++)
            {
                (byte r, byte g, byte b) = picture.At(left + x, top + y);
                grey[(y * width) + x] = (byte)((r + g + b) / 3);
            }
        }

        var reader = new BarcodeReaderGeneric { Options = new DecodingOptions { PossibleFormats = [BarcodeFormat.QR_CODE], TryHarder = true } };
        return reader.Decode(new RGBLuminanceSource(grey, width, height, RGBLuminanceSource.BitmapFormat.Gray8))?.Text;
    }
}
