using Foramen.Engine.Exposure;

namespace Foramen.Engine.Tests;

/// <summary>What tests ask of a trace.</summary>
internal static class TraceReading
{
    extension(MotionTrace trace)
    {
        /// <summary>Change in density; above zero where the trace is darker than its background.</summary>
        public double Change => trace.Traced.Value - trace.Bare.Value;

        public bool IsSeen => trace.Verdict != MotionVerdict.Vanishes;
    }
}
