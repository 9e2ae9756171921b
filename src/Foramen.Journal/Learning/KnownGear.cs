using System.Collections.Concurrent;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Learning;

/// <summary>Papers in kinds of light, worked out once for many sheets: their spectra are most of the work of a lesson. Grows as it is asked.</summary>
internal sealed class KnownGear
{
    private readonly ConcurrentDictionary<PaperDefinition, PhotographicPaper> papers = new(ReferenceEqualityComparer.Instance);
    private readonly ConcurrentDictionary<(PhotographicPaper Paper, double Kelvin), (LightColour Light, PaperResponse Response, Stops Colour)> lights = new(PaperInLight.Instance);

    public PhotographicPaper PaperOf(PaperDefinition definition)
        => papers.TryGetValue(definition, out var known) ? known : papers[definition] = definition.ToPaper();

    public LightColour LightOf(PhotographicPaper paper, double kelvin) => Known(paper, kelvin).Light;

    public PaperResponse ResponseOf(PhotographicPaper paper, double kelvin) => Known(paper, kelvin).Response;

    /// <summary>The errors of this gear, with the colour's spread out of what is known.</summary>
    public ExposureErrors ErrorsOf(PinholeCamera camera, PhotographicPaper paper, double kelvin) => ExposureErrors.Of(camera, paper.SpeedSpread, Known(paper, kelvin).Colour);

    private (LightColour Light, PaperResponse Response, Stops Colour) Known(PhotographicPaper paper, double kelvin)
    {
        if (lights.TryGetValue((paper, kelvin), out var known))
        {
            return known;
        }

        var light = LightColour.FromTemperature(ColourTemperature.FromKelvin(kelvin));
        return lights[(paper, kelvin)] = (light, PaperResponse.Of(paper, light), paper.ColourSpread(light));
    }

    // A paper is known by being the same one: comparing two papers member by member takes longer than it saves.
    private sealed class PaperInLight : IEqualityComparer<(PhotographicPaper Paper, double Kelvin)>
    {
        public static PaperInLight Instance { get; } = new();

        public bool Equals((PhotographicPaper Paper, double Kelvin) x, (PhotographicPaper Paper, double Kelvin) y) => ReferenceEquals(x.Paper, y.Paper) && x.Kelvin.Equals(y.Kelvin);

        public int GetHashCode((PhotographicPaper Paper, double Kelvin) key) => HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(key.Paper), key.Kelvin);
    }
}
