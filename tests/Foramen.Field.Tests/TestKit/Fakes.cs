using Foramen.Field.Device;
using Foramen.Field.Storage;

namespace Foramen.Field.Tests.TestKit;

internal sealed class FakePlatform : IPlatform
{
    public event Action? Returned;

    public string Settings { get; set; } = "";

    public string? Theme { get; private set; }

    public bool Updated { get; private set; }

    public Action<string>? OnState { get; private set; }

    public (double X, double Y)? Place { get; set; }

    public string ReadSettings() => Settings;

    public bool WriteSettings(string json)
    {
        Settings = json;
        return true;
    }

    public void ShowTheme(string theme) => Theme = theme;

    public Task WatchUpdatesAsync(Action<string> onState)
    {
        OnState = onState;
        return Task.CompletedTask;
    }

    public void ApplyUpdate() => Updated = true;

    public (double X, double Y)? PlaceIn(string elementId, double clientX, double clientY) => Place;

    public TimeSpan OffsetAt(DateTimeOffset instant) => TimeSpan.FromHours(2);

    public int Printed { get; private set; }

    public void Print() => Printed++;

    public string Demo { get; set; } = "";

    public Task<string> DemoOutingAsync() => Task.FromResult(Demo);

    public void Return() => Returned?.Invoke();
}

internal sealed class FakeSignals : ISignals
{
    public event Action? Ready;

    public void BecomeReady() => Ready?.Invoke();

    public List<(Signal Signal, TimeSpan After)> Planned { get; } = [];

    public int Vibrations { get; private set; }

    public void Play(Signal signal, TimeSpan after = default) => Planned.Add((signal, after));

    public void Cancel() => Planned.Clear();

    public void Vibrate(params IReadOnlyList<int> milliseconds) => Vibrations++;

    public Task PrepareAsync() => Task.CompletedTask;
}

internal sealed class FakeWake : IWake
{
    public event Action? Changed;

    public WakeState State { get; private set; }

    public Task HoldAsync()
    {
        State = WakeState.Held;
        Changed?.Invoke();
        return Task.CompletedTask;
    }

    public Task ReleaseAsync()
    {
        State = WakeState.Off;
        Changed?.Invoke();
        return Task.CompletedTask;
    }
}

internal sealed class FakePictures : IPictures
{
    public TakenPicture? Next { get; set; }

    public Exception? Refuse { get; set; }

    public byte[]? File { get; set; }

    public Task<string?> AddressOfAsync(string contentHash) => Task.FromResult<string?>("blob:" + contentHash);

    public Task<TakenPicture?> TakeAsync(string inputId, int longSide) => Refuse is { } e ? throw e : Task.FromResult(Next);

    public Task<TakenPicture?> ReadAsync(string contentHash, int longSide) => Task.FromResult(Next);

    public List<(string Address, string Hash)> Fetched { get; } = [];

    public Task<bool> FetchAsync(string address, string contentHash, string mediaType)
    {
        Fetched.Add((address, contentHash));
        return Task.FromResult(true);
    }

    public Task<byte[]?> ReadFileAsync(string inputId) => Task.FromResult(File);
}

internal sealed class FakeLevel : ILevel
{
    public Action<LevelReading>? OnReading { get; private set; }

    public LevelState State { get; set; } = LevelState.On;

    public Task<LevelState> StartAsync(Action<LevelReading> onReading)
    {
        OnReading = onReading;
        return Task.FromResult(State);
    }

    public void Stop() => OnReading = null;
}

internal sealed class FakeWhere : IWhere
{
    public (double Latitude, double Longitude)? Next { get; set; }

    public Task<(double Latitude, double Longitude)?> AskAsync() => Task.FromResult(Next);
}

internal sealed class FakeShare : IShare
{
    public (string Name, byte[] Bytes)? Handed { get; private set; }

    public Task<HandedOn> HandAsync(string fileName, string mediaType, byte[] bytes, bool preferShare = true)
    {
        Handed = (fileName, bytes);
        return Task.FromResult(HandedOn.Saved);
    }
}

internal sealed class FakePrintCanvas : IPrintCanvas
{
    public List<(int Width, int Height, byte[] Pixels)> Drawn { get; } = [];

    public Task PrepareAsync() => Task.CompletedTask;

    public void DrawGrey(string canvasId, int width, int height, Span<byte> greys) => Drawn.Add((width, height, greys.ToArray()));
}
