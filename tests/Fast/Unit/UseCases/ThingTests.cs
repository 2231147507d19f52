using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>Names by which a page and the plan mean the same thing of a drawing.</summary>
public class ThingTests
{
    [Theory]
    [InlineData("hole:L1", ThingKind.Hole, -1, false)]
    [InlineData("hole:odd: name.1", ThingKind.Hole, -1, false)]
    [InlineData("row:R3", ThingKind.RowHole, -1, false)]
    [InlineData("point:4", ThingKind.OutlinePoint, 4, false)]
    [InlineData("control:12.1", ThingKind.Control, 12, true)]
    [InlineData("control:12.2", ThingKind.Control, 12, false)]
    [InlineData("bow:0", ThingKind.Bow, 0, false)]
    [InlineData("edge:from", ThingKind.EdgeEnd, -1, true)]
    [InlineData("plunge:b", ThingKind.PlungeEnd, -1, false)]
    [InlineData("grip:to", ThingKind.GripEnd, -1, false)]
    [InlineData("datum:at", ThingKind.Datum, -1, false)]
    [InlineData("rowend:My.row.from", ThingKind.RowEnd, -1, true)]
    public void A_name_is_read_and_written(string text, ThingKind kind, int segment, bool isFirst)
    {
        var thing = Thing.Of(text)!;
        Assert.Equal((kind, segment), (thing.Kind, thing.Segment));
        if (kind is not (ThingKind.Hole or ThingKind.RowHole)) Assert.Equal(isFirst, thing.IsFirst);
        Assert.Equal(text, thing.ToString());
    }

    [Theory]
    [InlineData("")]
    [InlineData("hole")]
    [InlineData("pin:1")]
    [InlineData("point:-1")]
    [InlineData("point:1e3")]
    [InlineData("point:99999999999")]
    [InlineData("control:3")]
    [InlineData("control:3.3")]
    [InlineData("bow:x")]
    [InlineData("edge:middle")]
    [InlineData("plunge:from")]
    [InlineData("datum:")]
    [InlineData("rowend:R")]
    [InlineData("rowend:.from")]
    public void What_names_nothing_is_nothing(string text) => Assert.Null(Thing.Of(text));

    [Fact]
    public void The_row_of_a_row_end_may_have_points_in_its_name() => Assert.Equal("My.row", Thing.Of("rowend:My.row.from")!.Owner);
}
