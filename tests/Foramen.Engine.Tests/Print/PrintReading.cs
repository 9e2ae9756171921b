using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests;

/// <summary>What tests ask of a single pixel.</summary>
internal static class PrintReading
{
    extension(PredictedPrint print)
    {
        /// <summary>Density of a pixel; null where unknown.</summary>
        public Density? DensityAt(int column, int row)
            => print.Densities(TestContext.Current.CancellationToken)[(row * print.Width) + column] is var density && float.IsNaN(density) ? null : Density.FromValue(density);
    }
}
