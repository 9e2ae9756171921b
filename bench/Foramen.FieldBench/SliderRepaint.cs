using Microsoft.Playwright;

namespace Foramen.FieldBench;

/// <summary>
/// From a move of the time slider to the predicted print put on its canvas and the frame after it, as the page itself sees it: the time a finger waits.
/// </summary>
internal static class SliderRepaint
{
    private const string OneDrag =
        """
        async moves => {
          const slider = document.querySelector('#plan-time');
          const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
          const put = CanvasRenderingContext2D.prototype.putImageData;
          const times = [];
          let drawn = () => {};
          CanvasRenderingContext2D.prototype.putImageData = function (...args) { put.apply(this, args); drawn(); };
          const next = () => new Promise(resolve => requestAnimationFrame(resolve));
          for (let i = 0; i < moves; i++) {
            await next();
            const start = performance.now();
            const painted = new Promise(resolve => { drawn = () => resolve(performance.now() - start); });
            set.call(slider, String(5 + (i % 40) * 0.05));
            slider.dispatchEvent(new Event('input', { bubbles: true }));
            times.push(await painted);
          }
          CanvasRenderingContext2D.prototype.putImageData = put;
          const canvas = document.querySelector('#plan-print');
          return { times, width: canvas.width, height: canvas.height };
        }
        """;

    public static async Task<Repaints> MeasureAsync(IPage page)
    {
        // The first moves let the runtime compile what is hot.
        _ = await page.EvaluateAsync<Repaints>(OneDrag, 60);
        return await page.EvaluateAsync<Repaints>(OneDrag, 120);
    }

    /// <summary>Milliseconds from touch to picture, and the picture's size in pixels.</summary>
    internal sealed record Repaints
    {
        public double[] Times { get; init; } = [];

        public int Width { get; init; }

        public int Height { get; init; }
    }
}
