using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

public sealed class AttributeValuesTests
{
    private static readonly PartKind Trunk = PartKinds.Find("trunk")!;

    [Fact]
    public void What_is_not_given_is_answered_with_its_default()
    {
        var values = new AttributeValues(Trunk.AllAttributes);
        Assert.Equal(12, values.WholeNumber("base"));
        Assert.Equal(1, values.WholeNumber("legs"));
        Assert.Null(values.Word("type"));
        Assert.Null(values.Length("length"));
        Assert.Empty(values.Numbers("spare"));
        Assert.Empty(values.Given);
    }

    [Fact]
    public void What_is_given_is_answered_as_given()
    {
        AttributeValues values = new AttributeValues(Trunk.AllAttributes)
            .Set("type", "Type-C").Set("base", 8).Set("length", Length.FromMillimetres(62_000)).Set("spare", (IReadOnlyList<int>)[5, 6]);
        Assert.Equal("Type-C", values.Word("type"));
        Assert.Equal(8, values.WholeNumber("base"));
        Assert.Equal(62_000, values.Length("length")!.Value.Millimetres);
        Assert.Equal([5, 6], values.Numbers("spare"));
        Assert.True(values.Has("base"));
        Assert.False(values.Has("legs"));
    }

    [Fact]
    public void Values_filled_in_from_a_type_do_not_replace_the_parts_own()
    {
        AttributeValues own = new AttributeValues(Trunk.AllAttributes).Set("base", 8);
        own.FillFrom(new AttributeValues(Trunk.AllAttributes).Set("base", 12).Set("legs", 4));
        Assert.Equal(8, own.WholeNumber("base"));
        Assert.Equal(4, own.WholeNumber("legs"));
    }

    [Fact]
    public void A_shape_refuses_to_join_a_position_twice_or_to_itself()
    {
        var builder = new ShapeBuilder();
        int a = builder.AddPort(new PortShape("a", Face.Duplex, Side.Near));
        int b = builder.AddPort(new PortShape("b", Face.Duplex, Side.Far));
        builder.Join(a, 1, b, 1);
        Assert.Throws<InvalidOperationException>(() => builder.Join(a, 1, b, 2));
        Assert.Throws<InvalidOperationException>(() => builder.Join(a, 2, b, 1));
        Assert.Throws<InvalidOperationException>(() => builder.Join(a, 2, a, 2));
    }
}
