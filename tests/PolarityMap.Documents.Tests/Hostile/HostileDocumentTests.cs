using System.Text;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Hostile;

/// <summary>
/// Documents made to break the reader, from bytes to plant. Each is refused with a clear message, and what is allocated on the
/// way stays under a bound that is stated with it: work that grows beyond a document's size needs memory to show for it.
/// </summary>
public class HostileDocumentTests
{
    private const long Megabyte = 1 << 20;

    private const string Head = "plant: P\nparts:\n  SW: { kind: duplex interface, ports: 4 }\n";

    /// <summary>The problems of a document that is refused within a bound of memory.</summary>
    private static string Refused(byte[] bytes, long megabytes)
    {
        MemorySource source = new MemorySource().Add("p", bytes);
        var problems = new ProblemList();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Plant? plant = PlantDocument.Read("p", source, problems);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.Null(plant);
        Assert.False(problems.IsEmpty);
        Assert.InRange(allocated / Megabyte, 0, megabytes);
        string text = problems.ToString();
        Assert.InRange(text.Length, 1, 25_000);
        return text;
    }

    private static string Refused(string text, long megabytes) => Refused(Encoding.UTF8.GetBytes(text), megabytes);

    private static string First(string problems) => problems[..problems.IndexOf('\n', StringComparison.Ordinal)];

    private static string Repeat(int times, Func<int, string> line)
    {
        var text = new StringBuilder();
        for (int n = 1; n <= times; n++)
            text.Append(line(n));
        return text.ToString();
    }

    [Fact]
    public void A_bomb_of_aliases_is_not_expanded()
    {
        string bomb = "plant: P\ntypes:\n  a0: &a0 { kind: U1 cassette }\n" + Repeat(9, n => $"  a{n}: &a{n} [{string.Join(", ", Enumerable.Repeat($"*a{n - 1}", 9))}]\n");

        Assert.StartsWith("p:3:7: anchors such as '&a0' are not read", Refused(bomb, 4), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plant: P\nparts: &p\n  A: *p\n", "p:2:8: anchors such as '&p' are not read")]
    [InlineData("&r\nplant: P\nparts:\n  A: *r\n", "p:1:1: anchors such as '&r' are not read")]
    public void An_anchor_that_holds_itself_is_refused(string text, string problem) =>
        Assert.StartsWith(problem, Refused(text, 1), StringComparison.Ordinal);

    [Theory]
    [InlineData("legs: 1000000000", "'1000000000' is no legs; expected a whole number from 1 to 24")]
    [InlineData("legs: 99999999999999999999", "'99999999999999999999' is no legs; expected a whole number from 1 to 24")]
    [InlineData("legs: -1", "'-1' is no legs; expected a whole number from 1 to 24")]
    [InlineData("legs: 1e9", "'1e9' is no legs; expected a whole number from 1 to 24")]
    public void A_number_beyond_its_limits_is_refused_before_anything_is_made(string attribute, string problem) =>
        Assert.Equal($"p:4:36: {problem}\n", Refused(Head + $"  T: {{ kind: Type-B trunk,   {attribute} }}\n", 1));

    [Theory]
    [InlineData("A[1..1000000000]", "p:4:4: this stands for more than 100000 names")]
    [InlineData("A[1..999999999999999999]", "p:4:4: this stands for more than 100000 names")]
    [InlineData("A[1..1000]-[1..1000]", "p:4:14: this stands for more than 100000 names")]
    [InlineData("A[1..9]-[1..9]-[1..9]-[1..9]-[1..9]-[1..9]", "p:4:39: this stands for more than 100000 names")]
    [InlineData("A[1..99999999999999999999]", "p:4:8: the number is too large; expected at most 18 digits")]
    public void A_name_that_stands_for_too_many_is_refused_before_any_is_made(string name, string problem) =>
        Assert.Equal(problem + "\n", Refused(Head + $"  {name}: duplex interface\n", 1));

    [Theory]
    [InlineData("SW/1..1000000000, A-to-B cord, SW/1", "p:5:8: this stands for more than 100000 names")]
    [InlineData("SW[1..1000]/1..1000, A-to-B cord, SW/1", "p:5:5: this stands for more than 100000 addresses")]
    public void An_address_that_stands_for_too_many_is_refused(string run, string problem) =>
        Assert.Equal(problem + "\n", Refused(Head + $"runs:\n  - {run}\n", 1));

    [Fact]
    public void A_file_of_100_MB_is_not_read()
    {
        string problems = Refused(new byte[100 * Megabyte], 1);

        Assert.Equal("p: 'p' has 104857600 bytes, at most 16777216 are read\n", problems);
    }

    [Fact]
    public void A_file_of_100_MB_is_refused_as_well_when_the_source_hands_it_over()
    {
        var problems = new ProblemList();
        var source = new Careless(new byte[100 * Megabyte]);
        long before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Null(PlantDocument.Read("p", source, problems));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, Megabyte);
        Assert.Equal("p:1:1: the file has 104857600 bytes, more than the 16777216 that are read; split it into several files\n", problems.ToString());
    }

    /// <summary>A source that does not keep to the size that it is told.</summary>
    private sealed class Careless(byte[] content) : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            (bytes, why) = (content, "");
            return true;
        }
    }

    [Fact]
    public void Other_encodings_are_named()
    {
        Assert.Equal("p:1:1: the file is UTF-16; save the file as UTF-8\n", Refused([0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Head)], 1));
        Assert.Equal("p:1:1: the file is UTF-16; save the file as UTF-8\n", Refused([0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(Head)], 1));
        Assert.StartsWith("p:1:2: there is a NUL character (U+0000) here", Refused(Encoding.Unicode.GetBytes(Head), 1), StringComparison.Ordinal);
        Assert.Equal("p:1:9: byte 0xFC is not UTF-8 here; save the file as UTF-8\n", Refused([.. "plant: B"u8, 0xFC, .. "hne"u8], 1));
    }

    // The name stands in column 3 of line 4, the character after its first letter.
    [Theory]
    [InlineData("\0", "there is a NUL character (U+0000) here; delete it, or if the file is UTF-16 save the file as UTF-8")]
    [InlineData("\u0007", "there is a control character (U+0007) here; delete it")]
    [InlineData("\u001b", "there is a control character (U+001B) here; delete it")]
    [InlineData("\u202e", "U+202E changes the direction in which text is shown and can make a name read as another; delete it")]
    [InlineData("\u2066", "U+2066 changes the direction in which text is shown and can make a name read as another; delete it")]
    [InlineData("\u200b", "U+200B cannot be part of a name; expected letters, digits, single spaces inside, and - _ . + # ~ ( )")]
    [InlineData("\u00a0", "U+00A0 cannot be part of a name; expected letters, digits, single spaces inside, and - _ . + # ~ ( )")]
    public void A_character_that_is_not_seen_cannot_be_in_a_name(string character, string problem) =>
        Assert.Equal($"p:4:4: {problem}\n", Refused(Head + $"  A{character}B: duplex interface\n", 1));

    [Fact]
    public void An_escape_cannot_bring_one_in() =>
        Assert.Equal(
            "p:4:3: an escape in this text makes a character that is not allowed: U+202E changes the direction in which text is shown and can make a name read as another; delete it\n",
            Refused(Head + "  \"A\\u202eB\": duplex interface\n", 1));

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    public void Nesting_of_100_000_levels_is_refused(string opening) =>
        Assert.Contains("nested more than 32 deep here", Refused("plant:\n  " + Repeat(100_000, _ => opening), 8), StringComparison.Ordinal);

    [Fact]
    public void A_text_of_10_MB_is_refused() =>
        Assert.Equal(
            "p:4:29: this text has 10000000 characters, at most 65536 are read\n",
            Refused(Head + "  C: { kind: harness, note: " + new string('x', 10_000_000) + " }\n", 160));

    [Fact]
    public void The_same_key_again_and_again_is_told_a_few_times_only()
    {
        string problems = Refused(Head + Repeat(100_000, _ => "  SW: duplex interface\n"), 200);

        Assert.Equal("p:4:3: key 'SW' is here a second time; the first is at p:3:3", First(problems));
    }

    [Fact]
    public void Many_medium_ranges_are_refused_where_the_parts_become_too_many()
    {
        // 20,000 parts in a line: the 50th line makes a million with nothing to spare, and SW is there before.
        string problems = Refused(Head + Repeat(60, n => $"  A{n}-[1..20000]: simplex cord\n"), 700);

        Assert.Equal("p:53:3: the plant grows beyond 1000000 parts or 16000000 positions here\n", problems);
    }

    [Fact]
    public void Wide_parts_are_refused_where_the_positions_become_too_many()
    {
        // 4096 ports of 12 positions and 100 parts: 4,915,200 in a line, so that the fourth line is beyond 16 million.
        string problems = Refused(Head + Repeat(9, n => $"  A{n}-[1..100]: {{ kind: parallel interface, ports: 4096 }}\n"), 48);

        Assert.Equal("p:7:3: the plant grows beyond 1000000 parts or 16000000 positions here\n", problems);
    }

    [Fact]
    public void Wide_panels_one_by_one_are_refused_where_their_ports_become_too_many()
    {
        // 4 ports of SW and 4096 in each line: 1,000,000 are passed at the 245th, on line 248.
        string problems = Refused(Head + Repeat(5_000, n => $"  A{n}: {{ kind: array panel, ports: 4096 }}\n"), 500);

        Assert.Equal("p:248:9: the parts described up to here have more than 1000000 ports; no more are read\n", problems);
    }

    [Fact]
    public void Descriptions_without_a_kind_are_not_expanded_without_end()
    {
        // The keys differ and the names do not: each would make 100,000 names only to be refused.
        // The limit is passed at the 41st line.
        var problems = new ProblemList(cap: 100);
        long before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Null(PlantDocument.Read("p", new MemorySource().Add("p", Head + Repeat(2_000, n => $"  A[{n},1..99999]: nothing\n")), problems));
        Assert.InRange((GC.GetAllocatedBytesForCurrentThread() - before) / Megabyte, 0, 700);
        Assert.Equal(41, problems.Count);
        Assert.StartsWith("p:4:18: there is no kind or type 'nothing'", problems.Items[0].ToString(), StringComparison.Ordinal);
        Assert.Equal("p:44:3: the ranges up to here stand for more than 4000000 names; no more are read", problems.Items[40].ToString());
    }

    [Fact]
    public void Spare_legs_are_not_expanded_without_end()
    {
        // A hundred thousand numbers in a line: the limit is passed at the 41st.
        var problems = new ProblemList(cap: 100);
        long before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Null(PlantDocument.Read("p", new MemorySource().Add("p", Head + Repeat(2_000, n => $"  A{n}: {{ kind: Type-B trunk, spare: 1..100000 }}\n")), problems));
        Assert.InRange((GC.GetAllocatedBytesForCurrentThread() - before) / Megabyte, 0, 500);
        Assert.Equal(41, problems.Count);
        Assert.Equal("p:4:36: spare has more than 2000 entries; expected leg numbers, such as 5..8", problems.Items[0].ToString());
        Assert.Equal("p:44:37: the ranges up to here stand for more than 4000000 names; no more are read", problems.Items[40].ToString());
    }

    [Theory]
    [InlineData("99999999999999999999", "'99999999999999999999' is no wide position")]
    [InlineData("2147483648:1", "'2147483648:1' is no wide position")]
    [InlineData("1:2147483648", "'1:2147483648' is no wide position")]
    [InlineData("-5", "'-5' is no wide position")]
    [InlineData("1:2:3", "'1:2:3' is no wide position")]
    [InlineData("1e3", "'1e3' is no wide position")]
    public void A_number_in_a_conversion_is_refused_before_anything_is_made(string entry, string problem) =>
        Assert.StartsWith(
            $"p:4:75: {problem}; expected",
            Refused(Head + $"  M: {{ kind: conversion module, conversion: 16 to 2x8, wiring: [[1, 2, 3, {entry}]] }}\n", 1),
            StringComparison.Ordinal);

    [Theory]
    [InlineData("2147483647", "wide port 1 has no fibre at position 2147483647")]
    [InlineData("2147483647:2147483647", "there is no wide port 2147483647: 16 to 2x8 has 1")]
    public void A_large_number_in_a_conversion_is_no_position(string entry, string problem) =>
        Assert.Contains(
            problem,
            Refused(Head + $"  M: {{ kind: conversion module, conversion: 16 to 2x8, wiring: [[1, 2, 3, 4, 5, 6, 7, {entry}], [9, 10, 11, 12, 13, 14, 15, 16]] }}\n", 1),
            StringComparison.Ordinal);

    [Theory]
    [InlineData("conversion module, conversion: 16 to 2x8, wiring: [[{0}]]", "1", "wiring has more than 2000 entries")]
    [InlineData("conversion module, conversion: 16 to 2x8, wiring: [{0}]", "[1]", "wiring has more than 2000 entries")]
    [InlineData("trunk, wiring: [{0}]", "[1, 12]", "wiring has more than 2000 entries")]
    [InlineData("cassette, wiring: [{0}]", "[1, 12]", "wiring has more than 2000 entries")]
    [InlineData("splice, fibres: 1728, wiring: [{0}]", "[1, 1729]", "wiring has more than 2000 entries")]
    [InlineData("parallel interface, lanes: [{0}]", "[1, 12]", "lanes has more than 2000 entries")]
    [InlineData("U1 cassette, networks: [{0}]", "a", "networks has more than 2000 entries")]
    public void Long_lists_are_refused_before_they_are_looked_at(string kind, string entry, string problem)
    {
        string list = string.Join(", ", Enumerable.Repeat(entry, 100_000));

        Assert.Contains(problem, Refused(Head + "  X: { kind: " + kind.Replace("{0}", list, StringComparison.Ordinal) + " }\nnetworks: { a: ~ }\n", 260), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_thousand_wrong_entries_are_told_a_few_times_only() =>
        Assert.StartsWith(
            "p:4:44: position 1729 carries no fibre; a splice of 1728 fibres uses 1 to 1728\n",
            Refused(Head + $"  X: {{ kind: splice, fibres: 1728, wiring: [{string.Join(", ", Enumerable.Repeat("[1729, 1729]", 2_000))}] }}\n", 16),
            StringComparison.Ordinal);

    [Fact]
    public void Colours_without_end_are_refused_at_the_first_that_repeats() =>
        Assert.Equal(
            "p:4:28: 'red' is the same colour as number 1; each may stand once\n",
            Refused(Head + "defaults: { colours: [red, " + string.Join(", ", Enumerable.Repeat("red", 100_000)) + "] }\n", 64));

    [Fact]
    public void Wide_cables_are_refused_where_the_positions_become_too_many() =>
        Assert.Equal(
            "p:8:3: the plant grows beyond 1000000 parts or 16000000 positions here\n",
            Refused(Head + Repeat(9, n => $"  A{n}-[1..1000]: {{ kind: cable, fibres: 1728 }}\n"), 64));

    [Fact]
    public void A_hundred_thousand_includes_are_refused_unread()
    {
        MemorySource source = new MemorySource().Add("p", Head + "include: [" + string.Join(", ", Enumerable.Range(1, 100_000).Select(n => $"c{n}")) + "]\n").Add("c1", "catalogue: C\n");

        Assert.EndsWith("a document includes at most 50 catalogue files\n", Reading.Read("p", source).Problems, StringComparison.Ordinal);
        Assert.Equal(["p"], source.Asked);
    }

    /// <summary>Only a plant document includes, so there is no circle to be caught in.</summary>
    [Fact]
    public void Files_that_include_each_other_are_refused_at_the_first()
    {
        MemorySource source = new MemorySource().Add("p", Head + "include: a\n").Add("a", "catalogue: A\ninclude: b\n").Add("b", "catalogue: B\ninclude: a\n");

        Assert.Equal("a:2:1: a catalogue file has no key 'include'; expected one of catalogue, types\n", Reading.Read("p", source).Problems);
        Assert.Equal(["p", "a"], source.Asked);
    }

    [Fact]
    public void An_included_file_cannot_hold_more_than_a_document_may()
    {
        MemorySource source = new MemorySource().Add("p", Head + "include: [bomb, deep, large, other]\n")
            .Add("bomb", "catalogue: &a A\ntypes: *a\n")
            .Add("deep", "catalogue: " + Repeat(100_000, _ => "["))
            .Add("large", new byte[17 * Megabyte])
            .Add("other", [0xFF, 0xFE, 0x41, 0x00]);
        string problems = Reading.Read("p", source).Problems;

        Assert.Contains("bomb:1:12: anchors such as '&a' are not read", problems, StringComparison.Ordinal);
        Assert.Contains("nested more than 32 deep here", problems, StringComparison.Ordinal);
        Assert.Contains("p:4:23: 'large' has 17825792 bytes, at most 16777216 are read", problems, StringComparison.Ordinal);
        Assert.Contains("other:1:1: the file is UTF-16; save the file as UTF-8", problems, StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_with_the_word_between_very_many_times_is_refused_soon() =>
        Assert.StartsWith("p:5:5: there is no part 'a'", Refused(Head + "links:\n  - " + string.Join(" to ", Enumerable.Repeat("a", 10_000)) + "\n", 16), StringComparison.Ordinal);

    [Fact]
    public void Ranges_in_such_a_link_are_counted_whatever_becomes_of_it()
    {
        string link = "  - " + string.Join(" to ", Enumerable.Repeat("SW[1..100000]", 20)) + "\n";

        Assert.Contains("stand for more than", Refused(Head + "links:\n" + Repeat(2_000, _ => link), 1_500), StringComparison.Ordinal);
    }

    private const string Wide = "plant: P\ntypes:\n  c: A-to-B cord\nparts:\n  A[1..100000]: duplex interface\n  B[1..100000]: duplex interface\nruns:\n";

    [Fact]
    public void A_run_may_name_100_000_addresses()
    {
        Plant plant = Reading.Plant(Wide + "  - A[1..100000]/1, c, B[1..100000]/1\n");

        Assert.Equal(200_000, plant.Matings.Count);
        Assert.Equal(300_000, plant.Parts.Count);
    }

    [Fact]
    public void A_run_that_names_a_thousand_addresses_thousands_of_times_is_refused() =>
        Assert.Equal(
            "p:8:55977: the ranges up to here stand for more than 4000000 names; no more are read\n",
            Refused(Wide.Replace("100000", "1000", StringComparison.Ordinal) + "  - " + string.Join(", ", Enumerable.Repeat("A[1..1000]/1", 4_000)) + "\n", 900));

    [Fact]
    public void A_run_of_very_many_cords_in_step_is_refused_before_they_are_made() =>
        Assert.Equal(
            "p:8:314: the plant grows beyond 1000000 parts or 16000000 positions here\n",
            Refused(Wide.Replace("100000", "10000", StringComparison.Ordinal) + "  - A[1..10000]/1, " + string.Join(", ", Enumerable.Repeat("c", 10_000)) + "\n", 300));

    [Fact]
    public void Cords_between_cords_are_named_without_trying_all_names()
    {
        Plant plant = Reading.Plant(Wide + "  - A[1..20000]/1, c, c, c, B[1..20000]/1\n");

        Assert.Equal(260_000, plant.Parts.Count);
        Assert.Equal(20_000, plant.Parts.Count(p => p.Name.StartsWith("open~open", StringComparison.Ordinal)));
    }

    [Fact]
    public void Ports_of_wide_parts_are_found_without_trying_all_ports()
    {
        string text = "plant: P\nparts:\n  Q[1..24]: { kind: parallel interface, ports: 4096, breakout: 4x }\n  S[1..96]: { kind: duplex interface, ports: 4096 }\nlinks:\n"
            + Repeat(24, n => $"  - Q{n}/1..4096:1 to S{n}/1..4096\n");

        Assert.Equal(24 * 4096, Reading.Plant(text).Links.Count);
    }

    [Fact]
    public void Very_many_unknown_words_do_not_multiply_with_very_many_known_ones()
    {
        string kinds = "plant: P\ntypes:\n" + Repeat(10_000, n => $"  known type {n}: U1 cassette\n") + "parts:\n" + Repeat(10_000, n => $"  A{n}: unknown tipe {n}\n");
        string stops = Wide.Replace("100000", "20000", StringComparison.Ordinal) + Repeat(10_000, n => $"  - A1/1, {new string('y', 70)}{n}\n");

        Assert.StartsWith("p:10004:7: there is no kind or type 'unknown tipe 1'; expected one of known type 1,", Refused(kinds, 250), StringComparison.Ordinal);
        Assert.StartsWith("p:8:11: there is no part 'yyy", Refused(stops, 500), StringComparison.Ordinal);
    }

    [Fact]
    public void Differences_are_counted_and_found_without_trying_all_matings()
    {
        string text = Wide.Replace("100000", "30000", StringComparison.Ordinal) + "  - A[1..30000]/1, B[1..30000]/1\nas-built:\n  ";

        Assert.Equal(20_000, Reading.Plant(text + "unplugged:\n    - A[1..10000]/1\n").Matings.Count);
        Assert.Equal(
            "p:11:7: there are more than 10000 differences up to here; describe the site as a plant of its own\n",
            Refused(text + "exchanged:\n    - A[1..15000]/1 and A[15001..30000]/1\n", 400));
        Assert.Equal(
            "p:11:5: there are more than 10000 differences up to here; describe the site as a plant of its own\n",
            Refused(text + "parts:\n    A[1..30000]: { room: X }\n", 400));
    }

    [Fact]
    public void Long_words_do_not_make_long_messages()
    {
        string word = new('w', 60_000);
        foreach (string text in (string[])
        [
            Head + word + ": x\n",
            Head + $"  {word}: duplex interface\n",
            Head + $"  A: {word}\n",
            Head + $"  A: {{ kind: harness, {word}: x }}\n",
            Head + $"  A: {{ kind: harness, wiring: {word} }}\n",
            Head + $"  A: {{ kind: harness, base: {word} }}\n",
            Head + $"  A: {{ kind: harness, length: 1{word} }}\n",
            Head + $"  A: {{ kind: harness, length: {new string('1', 60_000)} }}\n",
            Head + $"  A: {{ kind: harness, network: {word} }}\n",
            Head + $"networks: {{ {word}: ~ }}\n",
            Head + $"networks: {{ a: {{ plain-fits: {word} }} }}\n",
            Head + $"networks: {{ a: {{ may-share: [{word}] }} }}\n",
            Head + $"  A: {{ kind: harness, array-loss: 1{word} }}\n",
            Head + $"  A: {{ kind: harness, attenuation: 1{word} }}\n",
            Head + $"  A: {{ kind: harness, networks: [{word}] }}\n",
            Head + $"  A: {{ kind: conversion module, conversion: 16 to 2x8, wiring: [[{word}]] }}\n",
            Head + $"defaults: {{ {word}: x }}\n",
            Head + $"defaults: {{ fibre: {word} }}\n",
            Head + $"defaults: {{ colours: {word} }}\n",
            Head + $"defaults: {{ colours: [{word}] }}\n",
            Head + $"defaults: {{ margin: 1{word} }}\n",
            Head + $"defaults: {{ group-index: {word} }}\n",
            Head + $"include: {word}\n",
            Head + $"include: ../{word}\n",
            Head + $"networks: {{ a: {{ {word}: ~ }} }}\n",
            Head + $"date: {word}\n",
            Head + $"design: ../{word}\n",
            Head + $"runs:\n  - {word}, SW/1\n",
            Head + $"runs:\n  - SW/{word}, SW/1\n",
            Head + $"runs:\n  - \"SW/1:{word}, SW/1\"\n",
            Head + $"runs:\n  - SW/1, A-to-B cord 1{word}, SW/2\n",
            Head + $"links:\n  - {word}\n",
            Head + $"links:\n  - SW/{word} to SW/1\n",
            Head + $"as-built: {{ {word}: x }}\n",
            Head + $"as-built: {{ parts: {{ {word}: x }} }}\n",
            Head + $"as-built: {{ unplugged: [SW/{word}] }}\n",
            Head + $"as-built: {{ moved: [{word}] }}\n",
        ])
        {
            Assert.InRange(Refused(text, 16).Length, 10, 700);
        }
    }

    [Fact]
    public void Line_breaks_in_a_word_do_not_break_a_message()
    {
        const string Word = "\"a\\nb\"";
        foreach (string text in (string[])
        [
            Head + Word + ": x\n",
            Head + $"  {Word}: duplex interface\n",
            Head + $"  A: {Word}\n",
            Head + $"  A: {{ kind: harness, {Word}: x }}\n",
            Head + $"  A: {{ kind: harness, wiring: {Word} }}\n",
            Head + $"  A: {{ kind: harness, length: {Word} }}\n",
            Head + $"  A: {{ kind: harness, length: \"1 m\\nb\" }}\n",
            Head + $"  A: {{ kind: harness, network: {Word} }}\n",
            Head + $"networks: {{ {Word}: ~ }}\n",
            Head + $"networks: {{ a: {{ may-share: [{Word}] }} }}\n",
            Head + $"  A: {{ kind: harness, array-loss: \"1 dB\\nb\" }}\n",
            Head + $"  A: {{ kind: conversion module, conversion: 16 to 2x8, wiring: [[{Word}]] }}\n",
            Head + $"defaults: {{ colours: [{Word}] }}\n",
            Head + $"defaults: {{ group-index: {Word} }}\n",
            Head + $"include: {Word}\n",
            Head + $"date: {Word}\n",
            Head + $"runs:\n  - {Word}\n",
            Head + $"runs:\n  - [SW/1, {Word}]\n",
            Head + $"links:\n  - {Word}\n",
            Head + $"as-built: {{ parts: {{ {Word}: x }} }}\n",
            Head + $"as-built: {{ moved: [{Word}] }}\n",
            "design: \"../a\\nb\"\nas-built: {}\n",
        ])
        {
            Assert.Equal(1, Refused(text, 1).Count(c => c == '\n'));
        }
    }
}
