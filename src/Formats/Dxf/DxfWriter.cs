using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>Writes a flat drawing as ASCII DXF R2000 (AC1015), mm: lines as LINE, arcs as ARC and ELLIPSE, curves as SPLINE of degree 3, holes as CIRCLE. Group codes after the published DXF reference.</summary>
public static class DxfWriter
{
    private const string ModelSpace = "*Model_Space";
    private const string PaperSpace = "*Paper_Space";

    // fixed handles of the tables and of the two spaces; entities count on from 0x20
    private const string ModelRecord = "17";
    private const string PaperRecord = "1B";
    private const string RootDictionary = "C";
    private const string GroupDictionary = "D";

    /// <summary>The file's text: LF line ends, the same for the same drawing.</summary>
    public static string Write(FlatDrawing drawing)
    {
        var box = drawing.Paths.Aggregate(Box.Nothing, (b, p) => b.With(p.Path.Bounds));
        foreach (var c in drawing.Circles) box = box.With(new Box(c.Centre.X - (c.DiameterMm / 2), c.Centre.Y - (c.DiameterMm / 2), c.Centre.X + (c.DiameterMm / 2), c.Centre.Y + (c.DiameterMm / 2)));
        if (drawing.Paths.IsEmpty && drawing.Circles.IsEmpty) box = new Box(0, 0, 0, 0);

        // the body first: the header must name the first free handle
        var body = new DxfText();
        Tables(body, drawing);
        Blocks(body);
        body.Put(0, "SECTION").Put(2, "ENTITIES");
        foreach (var p in drawing.Paths)
        {
            foreach (var segment in p.Path.Segments) DxfEntities.Put(body, LayerName(p.Layer), ModelRecord, segment);
        }

        foreach (var c in drawing.Circles) DxfEntities.PutCircle(body, LayerName(c.Layer), ModelRecord, c.Centre, c.DiameterMm / 2);
        body.Put(0, "ENDSEC");
        Objects(body);
        body.Put(0, "EOF");

        var head = new DxfText();
        head.Put(999, drawing.Title);
        head.Put(0, "SECTION").Put(2, "HEADER")
            .Put(9, "$ACADVER").Put(1, "AC1015")
            .Put(9, "$HANDSEED").Put(5, body.NextFree)
            .Put(9, "$INSUNITS").Put(70, 4)
            .Put(9, "$MEASUREMENT").Put(70, 1)
            .Put(9, "$EXTMIN").PutPoint(10, new Point(box.MinX, box.MinY))
            .Put(9, "$EXTMAX").PutPoint(10, new Point(box.MaxX, box.MaxY))
            .Put(0, "ENDSEC");
        return head.ToString() + body;
    }

    /// <summary>A layer's name in plain ASCII, without the marks DXF forbids in names.</summary>
    private static string LayerName(string name)
        => name.Length == 0 ? "0" : new string([.. name.Select(c => c is <= ' ' or > '~' || "<>/\\\":;?*|=`,".Contains(c, StringComparison.Ordinal) ? '_' : c)]);

    private static void Tables(DxfText t, FlatDrawing drawing)
    {
        t.Put(0, "SECTION").Put(2, "TABLES");
        Table(t, "VPORT", "8", 0);
        Table(t, "LTYPE", "5", 3);
        Linetype(t, "14", "ByBlock");
        Linetype(t, "15", "ByLayer");
        Linetype(t, "16", "Continuous");
        EndTable(t);
        var layers = drawing.Paths.Select(p => p.Layer).Concat(drawing.Circles.Select(c => c.Layer)).Select(LayerName)
            .Where(l => l != "0").Distinct(StringComparer.OrdinalIgnoreCase).ToArray();
        Table(t, "LAYER", "2", layers.Length + 1);
        Layer(t, "10", "0");
        foreach (var l in layers) Layer(t, t.NewHandle(), l);
        EndTable(t);
        Table(t, "STYLE", "3", 1);
        t.Put(0, "STYLE").Put(5, "11").Put(330, "3").Put(100, "AcDbSymbolTableRecord").Put(100, "AcDbTextStyleTableRecord")
            .Put(2, "Standard").Put(70, 0).Put(40, 0.0).Put(41, 1.0).Put(50, 0.0).Put(71, 0).Put(42, 2.5).Put(3, "txt").Put(4, "");
        EndTable(t);
        Table(t, "VIEW", "6", 0);
        EndTable(t);
        Table(t, "UCS", "7", 0);
        EndTable(t);
        Table(t, "APPID", "9", 1);
        t.Put(0, "APPID").Put(5, "12").Put(330, "9").Put(100, "AcDbSymbolTableRecord").Put(100, "AcDbRegAppTableRecord").Put(2, "ACAD").Put(70, 0);
        EndTable(t);
        Table(t, "DIMSTYLE", "A", 1);
        t.Put(100, "AcDbDimStyleTable").Put(0, "DIMSTYLE").Put(105, "13").Put(330, "A").Put(100, "AcDbSymbolTableRecord").Put(100, "AcDbDimStyleTableRecord").Put(2, "Standard").Put(70, 0);
        EndTable(t);
        Table(t, "BLOCK_RECORD", "1", 2);
        BlockRecord(t, ModelRecord, ModelSpace);
        BlockRecord(t, PaperRecord, PaperSpace);
        EndTable(t);
        t.Put(0, "ENDSEC");
    }

    private static void Table(DxfText t, string name, string handle, int count)
    {
        t.Put(0, "TABLE").Put(2, name).Put(5, handle).Put(330, "0").Put(100, "AcDbSymbolTable").Put(70, count);
        if (name == "VPORT") EndTable(t);
    }

    private static void EndTable(DxfText t) => t.Put(0, "ENDTAB");

    private static void Linetype(DxfText t, string handle, string name)
        => t.Put(0, "LTYPE").Put(5, handle).Put(330, "5").Put(100, "AcDbSymbolTableRecord").Put(100, "AcDbLinetypeTableRecord")
            .Put(2, name).Put(70, 0).Put(3, "").Put(72, 65).Put(73, 0).Put(40, 0.0);

    private static void Layer(DxfText t, string handle, string name)
        => t.Put(0, "LAYER").Put(5, handle).Put(330, "2").Put(100, "AcDbSymbolTableRecord").Put(100, "AcDbLayerTableRecord")
            .Put(2, name).Put(70, 0).Put(62, 7).Put(6, "Continuous");

    private static void BlockRecord(DxfText t, string handle, string name)
        => t.Put(0, "BLOCK_RECORD").Put(5, handle).Put(330, "1").Put(100, "AcDbSymbolTableRecord").Put(100, "AcDbBlockTableRecord").Put(2, name);

    private static void Blocks(DxfText t)
    {
        t.Put(0, "SECTION").Put(2, "BLOCKS");
        Block(t, ModelSpace, ModelRecord, "18", "19", paper: false);
        Block(t, PaperSpace, PaperRecord, "1C", "1D", paper: true);
        t.Put(0, "ENDSEC");
    }

    private static void Block(DxfText t, string name, string record, string begin, string end, bool paper)
    {
        t.Put(0, "BLOCK").Put(5, begin).Put(330, record).Put(100, "AcDbEntity");
        if (paper) t.Put(67, 1);
        t.Put(8, "0").Put(100, "AcDbBlockBegin").Put(2, name).Put(70, 0).PutPoint(10, default).Put(3, name).Put(1, "");
        t.Put(0, "ENDBLK").Put(5, end).Put(330, record).Put(100, "AcDbEntity");
        if (paper) t.Put(67, 1);
        t.Put(8, "0").Put(100, "AcDbBlockEnd");
    }

    private static void Objects(DxfText t)
        => t.Put(0, "SECTION").Put(2, "OBJECTS")
            .Put(0, "DICTIONARY").Put(5, RootDictionary).Put(330, "0").Put(100, "AcDbDictionary").Put(281, 1).Put(3, "ACAD_GROUP").Put(350, GroupDictionary)
            .Put(0, "DICTIONARY").Put(5, GroupDictionary).Put(330, RootDictionary).Put(100, "AcDbDictionary").Put(281, 1)
            .Put(0, "ENDSEC");
}
