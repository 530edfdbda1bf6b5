namespace CastBook.Planning.Findings;

/// <summary>The fields of the shop's own sheets and of the tree lines, as findings name them.</summary>
#pragma warning disable CS1591 // Missing XML comment: the constants say themselves.
public static class ShopField
{
    public const string Name = "name";
    public const string Kind = "kind";
    public const string Density = "density";
    public const string InsideDiameter = "insideDiameter";
    public const string Height = "height";
    public const string Owned = "owned";
    public const string Method = "method";
    public const string Holds = "holds";
    public const string Powder = "powder";
    public const string Water = "water";
    public const string SprueDiameter = "sprueDiameter";
    public const string BaseHeight = "baseHeight";
    public const string Cup = "cup";
    public const string PerTree = "perTree";
    public const string AboveTree = "aboveTree";
    public const string ToWall = "toWall";
    public const string Rated = "rated";
    public const string RatedFor = "ratedFor";
    public const string Alloys = "alloys";
    public const string Shape = "shape";
    public const string InsideWidth = "insideWidth";
    public const string InsideDepth = "insideDepth";
    public const string Power = "power";
    public const string Cools = "cools";
    public const string ReadsHighBy = "readsHighBy";
    public const string OtherNames = "otherNames";
    public const string Composition = "composition";
    public const string Solidus = "solidus";
    public const string Liquidus = "liquidus";
    public const string MetalTemperature = "metalTemperature";
    public const string FlaskTemperatureFine = "flaskTemperatureFine";
    public const string FlaskTemperatureOrdinary = "flaskTemperatureOrdinary";
    public const string FlaskTemperatureHeavy = "flaskTemperatureHeavy";
    public const string QuenchAfter = "quenchAfter";
    public const string Loss = "loss";
    public const string Fresh = "fresh";
    public const string Remelt = "remelt";
    public const string Price = "price";
    public const string PrintAtLeast = "printAtLeast";
    public const string WashAtMost = "washAtMost";
    public const string CureEachSide = "cureEachSide";
    public const string WaterPer100 = "waterPer100";
    public const string PowderDensity = "powderDensity";
    public const string WorkingTime = "workingTime";
    public const string SetAtLeast = "setAtLeast";
    public const string NeverAbove = "neverAbove";
    public const string InStock = "inStock";
    public const string For = "for";
    public const string UpToDiameter = "upToDiameter";
    public const string UpToHeight = "upToHeight";
    public const string LoadAt = "loadAt";
    public const string Stage = "stage";
    public const string Target = "target";
    public const string Rate = "rate";
    public const string Hold = "hold";
    public const string Base = "base";
    public const string TreeOnBase = "treeOnBase";
    public const string OfItWax = "ofItWax";
    public const string State = "state";
    public const string Charge = "charge";
    public const string Size = "size";
}
