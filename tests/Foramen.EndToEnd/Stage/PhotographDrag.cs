using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>A drag over the photograph of the Frame step; the bench has it from here too.</summary>
internal static class PhotographDrag
{
    /// <summary>Drags over the photograph of the Frame step, from one place to another in fractions of the photograph.</summary>
    public static async Task DragOnPhotographAsync(this ILocator overlay, (double X, double Y) from, (double X, double Y) to)
    {
        await overlay.EvaluateAsync("e => e.scrollIntoView({ block: 'start' })");
        var seen = await overlay.EvaluateAsync<double[]>(
            """
            e => {
              const svg = e.querySelector('svg'), image = e.querySelector('image'), box = svg.getBoundingClientRect(), view = svg.viewBox.baseVal;
              const scale = box.width / view.width;
              return [box.x - view.x * scale, box.y - view.y * scale, image.width.baseVal.value * scale, image.height.baseVal.value * scale];
            }
            """);
        var mouse = overlay.Page.Mouse;
        async Task MoveAsync((double X, double Y) place, int steps)
            => await mouse.MoveAsync((float)(seen[0] + (place.X * seen[2])), (float)(seen[1] + (place.Y * seen[3])), new() { Steps = steps });
        await MoveAsync(from, 1);
        await mouse.DownAsync();
        await MoveAsync(to, 4);
        await mouse.UpAsync();
    }
}
