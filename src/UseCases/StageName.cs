using Tangwright.Core;

namespace Tangwright.UseCases;

/// <summary>Names of the stages: as other programs read them and as people do.</summary>
public static class StageName
{
    /// <summary>The stable name.</summary>
    public static string Key(Stage stage) => stage switch
    {
        Stage.Blank => "blank",
        Stage.Profiled => "profiled",
        Stage.Drilled => "drilled",
        Stage.BeforeHardening => "before_hardening",
        Stage.Finished => "finished",
        Stage.Assembled => "assembled",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "no such stage"),
    };
}
