using Foramen.Home.Access;
using Foramen.Storage;

namespace Foramen.Home;

/// <summary>A Home that listens.</summary>
/// <param name="App">The web application.</param>
/// <param name="Store">Its journal; null where it keeps none.</param>
/// <param name="Address">Where it listens, without a slash at the end.</param>
/// <param name="FirstCode">A code to pair the first device by, where it serves more than this machine and writes no structured log.</param>
/// <param name="Codes">Its open codes.</param>
internal sealed record RunningHome(WebApplication App, JournalStore? Store, string Address, string? FirstCode, PairingCodes Codes) : IAsyncDisposable
{
    public async ValueTask DisposeAsync()
    {
        // Requests under way come to their end first.
        await App.StopAsync();
        await App.DisposeAsync();
        if (Store is not null)
        {
            await Store.DisposeAsync();
        }
    }
}
