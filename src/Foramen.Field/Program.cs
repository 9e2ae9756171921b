using System.Globalization;
using Foramen.Field.Device;
using Foramen.Field.Homes;
using Foramen.Field.Learning;
using Foramen.Field.Settings;
using Foramen.Field.Sheets;
using Foramen.Field.Shell;
using Foramen.Field.Storage;
using Foramen.Field.Texts;
using Foramen.Field.Time;
using Foramen.Field.Versions;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

if (!OperatingSystem.IsBrowser())
{
    throw new PlatformNotSupportedException("Field runs in a browser; start Foramen Home and open its address.");
}

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");

var platform = await BrowserPlatform.LoadAsync();
var (tenths, thousands) = BrowserPlatform.NumberSigns();
CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = ScreenCulture.Of(tenths, thousands);
builder.Services.AddSingleton<IPlatform>(platform);
builder.Services.AddSingleton<IZone>(platform);
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton<Clock>();
builder.Services.AddSingleton<SettingsKeeper>();
builder.Services.AddSingleton<IJournalStore, BrowserJournalStore>();
builder.Services.AddSingleton<IPictures, BrowserPictures>();
builder.Services.AddSingleton<JournalSession>();
builder.Services.AddSingleton<Lessons>();
builder.Services.AddSingleton<Bag>();
builder.Services.AddSingleton<IWake, BrowserWake>();
builder.Services.AddSingleton<ISignals, BrowserSignals>();
builder.Services.AddSingleton<RunningWatch>();
builder.Services.AddSingleton<ILevel, BrowserLevel>();
builder.Services.AddSingleton<IShare, BrowserShare>();
builder.Services.AddSingleton<IWhere, BrowserWhere>();
builder.Services.AddSingleton<IPrintCanvas, BrowserPrintCanvas>();
builder.Services.AddSingleton<Updates>();
builder.Services.AddSingleton<IHomeLink, BrowserHomeLink>();
builder.Services.AddSingleton<HomeTie>();
builder.Services.AddTransient<SheetState>();
builder.Services.AddSingleton<SheetScene>();

var host = builder.Build();
// The journal is read while the shell is drawn.
_ = BeginAsync(host.Services);
await host.RunAsync();

// A journal that Home holds already is no empty one: Home comes first, the demo after.
async Task BeginAsync(IServiceProvider services)
{
    var prepared = services.GetRequiredService<Lessons>().PrepareAsync();
    await services.GetRequiredService<HomeTie>().StartAsync();
    await DemoOuting.TakeInAsync(services.GetRequiredService<JournalSession>(), platform, services.GetRequiredService<IPictures>());
    await prepared;
}
