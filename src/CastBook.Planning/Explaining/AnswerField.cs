namespace CastBook.Planning.Explaining;

/// <summary>The answers of a plan that have an account, by what they are about.</summary>
#pragma warning disable CS1591 // Missing XML comment: the constants say themselves.
public static class AnswerField
{
    public const string MetalEach = "metalEach";
    public const string Metal = "metal";
    public const string Flask = "flask";
    public const string Mix = "mix";
    public const string Burnout = "burnout";
    public const string Charge = "charge";
    public const string Powder = "powder";
    public const string Water = "water";
    public const string MetalTemperature = "metalTemperature";
    public const string FlaskTemperature = "flaskTemperature";
    public const string QuenchAfter = "quenchAfter";
    public const string Fresh = "fresh";
    public const string Remelt = "remelt";
    public const string Needed = "needed";
    public const string Charges = "charges";
    public const string ToBuyAsSold = "toBuyAsSold";
    public const string ToBuy = "toBuy";
    public const string Pieces = "pieces";
    public const string InStock = "inStock";
    public const string FreshInStock = "freshInStock";
    public const string RemeltInStock = "remeltInStock";
    public const string FreshAtLeast = "freshAtLeast";
    public const string MadeUp = "madeUp";
    public const string PourAt = "pourAt";
    public const string QuenchAt = "quenchAt";
    public const string StepBegins = "stepBegins";
    public const string StepEnds = "stepEnds";
    public const string StageTarget = "stageTarget";
    public const string StageTargetFahrenheit = "stageTargetFahrenheit";
    public const string StageRate = "stageRate";
    public const string StageRateFahrenheit = "stageRateFahrenheit";
    public const string StageHold = "stageHold";
    public const string CoreSlow = "coreSlow";
    public const string CoreFast = "coreFast";
    public const string CoreArrivesSlow = "coreArrivesSlow";
    public const string CoreArrivesFast = "coreArrivesFast";
    public const string CourseHours = "courseHours";
    public const string CourseKiln = "courseKiln";
    public const string MixBegins = "mixBegins";
    public const string MixPowder = "mixPowder";
    public const string MixWater = "mixWater";
    public const string MixSlurry = "mixSlurry";
    public const string MixTakes = "mixTakes";
    public const string MixPourDoneBy = "mixPourDoneBy";
    public const string MixGlossOff = "mixGlossOff";
}
