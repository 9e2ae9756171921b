using System.Diagnostics;
using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using System.Text.Json;
using Foramen.Home.Tests.Faults;
using Foramen.Home.Tests.Sync;
using Foramen.Home.Tests.TestKit;
using Foramen.Journal.Entries;
using Foramen.Journal.Sync;

namespace Foramen.Home.Tests.Access;

/// <summary>Who may do what, and what hostile requests come to.</summary>
public class GateTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("Origin", "https://elsewhere.example")]
    [InlineData("Origin", "null")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [Trait("Promise", "H8")]
    public async Task A_page_of_another_site_can_neither_write_nor_read(string header, string value)
    {
        await using var fixture = await HomeFixture.StartAsync();
        foreach (var method in new[] { HttpMethod.Get, HttpMethod.Post })
        {
            using var request = new HttpRequestMessage(method, "/api/entries") { Content = method == HttpMethod.Post ? Batch(1) : null };
            request.Headers.Add(header, value);
            Assert.Equal(HttpStatusCode.Forbidden, (await fixture.Client.SendAsync(request, Cancellation)).StatusCode);
        }

        Assert.Equal(0, (await fixture.Home.Store!.ConditionAsync(Cancellation)).Entries);
    }

    [Fact]
    [Trait("Promise", "H8")]
    public async Task A_foreign_name_that_leads_to_this_machine_is_not_answered()
    {
        await using var fixture = await HomeFixture.StartAsync();
        foreach (var path in new[] { "/", "/api/home", "/api/entries", "/health" })
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, path) { Headers = { Host = "elsewhere.example" } };
            // RFC 9110, 15.5.20.
            Assert.Equal(HttpStatusCode.MisdirectedRequest, (await fixture.Client.SendAsync(request, Cancellation)).StatusCode);
        }
    }

    [Theory]
    [InlineData("X-Forwarded-For", "203.0.113.7")]
    [InlineData("Forwarded", "for=203.0.113.7")]
    [Trait("Promise", "H9")]
    public async Task Who_comes_through_a_proxy_is_not_this_machines_own_user(string header, string value)
    {
        await using var fixture = await HomeFixture.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/entries") { Headers = { { header, value } } };
        Assert.Equal(HttpStatusCode.Unauthorized, (await fixture.Client.SendAsync(request, Cancellation)).StatusCode);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data")]
    [Trait("Promise", "H8")]
    public async Task Kinds_of_bodies_that_a_page_may_send_unasked_are_refused(string kind)
    {
        await using var fixture = await HomeFixture.StartAsync();
        using var content = Batch(1);
        content.Headers.ContentType = new MediaTypeHeaderValue(kind);
        Assert.Equal(HttpStatusCode.BadRequest, (await fixture.Client.PostAsync("/api/entries", content, Cancellation)).StatusCode);
        Assert.Equal(0, (await fixture.Home.Store!.ConditionAsync(Cancellation)).Entries);
    }

    [Fact]
    [Trait("Promise", "H8")]
    public async Task A_packed_body_is_refused_unread()
    {
        await using var fixture = await HomeFixture.StartAsync();
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            var zeros = new byte[1_000_000];
            for (var i = 0; i < 100; i++)
            {
                gzip.Write(zeros);
            }
        }

        using var content = new ByteArrayContent(packed.ToArray()) { Headers = { ContentType = new MediaTypeHeaderValue(SyncBatch.MediaType), ContentEncoding = { "gzip" } } };
        Assert.Equal(HttpStatusCode.BadRequest, (await fixture.Client.PostAsync("/api/entries", content, Cancellation)).StatusCode);
    }

    [Fact]
    [Trait("Promise", "H8")]
    public async Task An_oversize_batch_is_refused_before_it_is_read_and_a_chunked_one_in_the_middle()
    {
        await using var fixture = await HomeFixture.StartAsync();
        var large = new byte[SyncBatch.MaxBytes + 1];
        foreach (var chunked in new[] { false, true })
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, "/api/entries")
            {
                Content = new ByteArrayContent(large) { Headers = { ContentType = new MediaTypeHeaderValue(SyncBatch.MediaType) } },
            };
            request.Headers.TransferEncodingChunked = chunked;
            request.Headers.ExpectContinue = true;
            Assert.Equal(HttpStatusCode.RequestEntityTooLarge, (await fixture.Client.SendAsync(request, Cancellation)).StatusCode);
        }
    }

    [Theory]
    [InlineData("""{"foramenSync":1,"entries":1}""" + "\n" + """{"id":"01KQPP9PE0000000000000000R","device":"x","sequence":1,"at":"2026-05-03T10:00:00.005Z","offsetMinutes":120,"kind":"hole.closed","version":1,"body":{},"hash":"0000000000000000000000000000000000000000000000000000000000000000"}""" + "\n")]
    [InlineData("""{"foramenSync":1,"entries":1}""" + "\n" + """{"id":"../../etc","device":"x"}""" + "\n")]
    [InlineData("""{"foramenSync":1,"entries":1}""" + "\n[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[\n")]
    [InlineData("""{"foramenSync":1,"entries":1}""" + "\n<script>\n")]
    [Trait("Promise", "H8")]
    public async Task A_forged_or_damaged_entry_is_refused_with_its_place(string batch)
    {
        await using var fixture = await HomeFixture.StartAsync();
        using var content = new StringContent(batch, Encoding.UTF8, SyncBatch.MediaType);
        var response = await fixture.Client.PostAsync("/api/entries", content, Cancellation);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        using var json = JsonDocument.Parse(await response.Content.ReadAsStringAsync(Cancellation));
        Assert.Equal("badEntry", json.RootElement.GetProperty("refusal").GetString());
        Assert.Equal(0, json.RootElement.GetProperty("line").GetInt32());
        Assert.Equal("application/json", response.Content.Headers.ContentType!.MediaType);
        Assert.Equal(0, (await fixture.Home.Store!.ConditionAsync(Cancellation)).Entries);
    }

    [Fact]
    [Trait("Promise", "H8")]
    public async Task A_forged_copy_under_a_known_id_takes_nothing_away()
    {
        await using var fixture = await HomeFixture.StartAsync();
        await fixture.Client.PostAsync("/api/entries", Batch(1), Cancellation);
        var real = Writing.Entry("phone", 1);
        var forged = Entry.CreateRaw(real.Id, real.Device, real.Sequence, real.At, real.Kind, 1, """{"forged":true}""");
        using var content = new ByteArrayContent(SyncBatch.Write([Writing.Line(forged)])) { Headers = { ContentType = new MediaTypeHeaderValue(SyncBatch.MediaType) } };
        await fixture.Client.PostAsync("/api/entries", content, Cancellation);
        var lines = (await fixture.Home.Store!.ReadAfterAsync(0, cancellation: Cancellation)).Select(stored => stored.Line);
        Assert.Equal([Writing.Line(real), Writing.Line(forged)], lines);
    }

    [Fact]
    [Trait("Promise", "H9")]
    public async Task A_code_pairs_one_device_once_and_only_in_time()
    {
        await using var fixture = await HomeFixture.StartAsync();
        var code = await CodeAsync(fixture);
        Assert.Equal(HttpStatusCode.OK, (await PairAsync(fixture, code)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await PairAsync(fixture, code)).StatusCode);
        code = await CodeAsync(fixture);
        fixture.Time.Advance(TimeSpan.FromMinutes(11));
        Assert.Equal(HttpStatusCode.Forbidden, (await PairAsync(fixture, code)).StatusCode);
        code = await CodeAsync(fixture);
        Assert.Equal(HttpStatusCode.OK, (await PairAsync(fixture, code.ToLowerInvariant().Insert(5, "-"))).StatusCode);
    }

    [Fact]
    [Trait("Promise", "H9")]
    public async Task Guessing_codes_is_slowed_and_in_the_end_closes_them_all()
    {
        await using var fixture = await HomeFixture.StartAsync();
        var code = await CodeAsync(fixture);
        for (var minute = 0; minute < 3; minute++)
        {
            for (var i = 0; i < 10; i++)
            {
                Assert.Equal(HttpStatusCode.Forbidden, (await PairAsync(fixture, "AAAAAAAAAA")).StatusCode);
            }

            // RFC 6585, 4.
            var slowed = await PairAsync(fixture, code);
            Assert.Equal(HttpStatusCode.TooManyRequests, slowed.StatusCode);
            Assert.NotNull(slowed.Headers.RetryAfter);
            fixture.Time.Advance(TimeSpan.FromMinutes(1.1));
        }

        Assert.Equal(HttpStatusCode.Forbidden, (await PairAsync(fixture, code)).StatusCode);
    }

    [Fact]
    [Trait("Promise", "H9")]
    public async Task Over_TLS_on_every_address_only_paired_devices_get_in_until_they_are_removed()
    {
        using var folder = new TempFolder();
        await using var fixture = await HomeFixture.StartAsync("--listen", "0.0.0.0", "--certificate", SelfSigned(folder));
        // As from another machine: by a name that is not this machine's own.
        using var client = new HttpClient(new SocketsHttpHandler { SslOptions = { RemoteCertificateValidationCallback = (_, shown, _, _) => shown?.Subject == "CN=home.example" } })
        {
            BaseAddress = new Uri($"https://127.0.0.1:{new Uri(fixture.Home.Address.Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal)).Port}"),
            DefaultRequestHeaders = { Host = "home.example" },
        };
        Assert.Equal(HttpStatusCode.Unauthorized, (await client.GetAsync("/api/entries", Cancellation)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await client.PostAsync("/api/codes", null, Cancellation)).StatusCode);
        Assert.Contains("needed", await client.GetStringAsync("/api/home", Cancellation), StringComparison.Ordinal);
        Assert.Equal("""{"status":"ok"}""", await client.GetStringAsync("/health", Cancellation));

        using var asked = Json(new { code = fixture.Home.FirstCode, name = "tablet" });
        using var paired = JsonDocument.Parse(await (await client.PostAsync("/api/pair", asked, Cancellation)).Content.ReadAsStringAsync(Cancellation));
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", paired.RootElement.GetProperty("token").GetString());
        Assert.Equal(HttpStatusCode.OK, (await client.PostAsync("/api/entries", Batch(3), Cancellation)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await client.PostAsync("/api/codes", null, Cancellation)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync("/api/devices", Cancellation)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await client.DeleteAsync("/api/devices/999", Cancellation)).StatusCode);
        Assert.True(await fixture.Home.Store!.Devices.RevokeAsync(1, fixture.Time.GetUtcNow(), Cancellation));
        Assert.Equal(HttpStatusCode.Unauthorized, (await client.GetAsync("/api/entries", Cancellation)).StatusCode);
    }

    [Fact]
    [Trait("Promise", "H9")]
    public async Task Home_refuses_to_serve_others_without_a_certificate()
    {
        var (code, error) = await RunAsync("--listen", "0.0.0.0", "--data", "none");
        Assert.Equal(2, code);
        Assert.Equal("Others could listen to what goes to 0.0.0.0; give a certificate with --certificate, or leave --listen out to serve this machine only.\n", error);
    }

    [Theory]
    [InlineData("--port", "70000")]
    [InlineData("--port", "x")]
    [InlineData("--listen", "here")]
    [InlineData("--certificate", "/nowhere/at-all.pfx")]
    [InlineData("--demo", "/nowhere/at-all.jsonl")]
    [InlineData("--log", "loud")]
    public async Task A_wrong_wish_is_refused_in_one_sentence(string option, string value)
    {
        var (code, error) = await RunAsync(option, value, "--data", "none");
        Assert.Equal(2, code);
        Assert.Matches("^[^\n]+\\.\n$", error);
    }

    [Fact]
    [Trait("Promise", "H9")]
    public async Task The_content_policy_stays_strict_and_no_token_or_code_stands_in_the_store()
    {
        await using var fixture = await HomeFixture.StartAsync();
        var policy = (await fixture.Client.GetAsync("/", Cancellation)).Headers.GetValues("Content-Security-Policy").Single();
        Assert.DoesNotContain("unsafe-inline", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
        var code = await CodeAsync(fixture);
        using var paired = JsonDocument.Parse(await (await PairAsync(fixture, code)).Content.ReadAsStringAsync(Cancellation));
        var token = paired.RootElement.GetProperty("token").GetString()!;
        foreach (var file in Directory.EnumerateFiles(fixture.Data, "*", SearchOption.AllDirectories))
        {
            await using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            var bytes = new byte[stream.Length];
            await stream.ReadExactlyAsync(bytes, Cancellation);
            Assert.True(bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(token)) < 0, file);
            Assert.True(bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(code)) < 0, file);
        }
    }

    private static async Task<(int Code, string Error)> RunAsync(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", [Repository.HomeDll, .. arguments]) { RedirectStandardError = true, RedirectStandardOutput = true })!;
        var error = await process.StandardError.ReadToEndAsync(Cancellation);
        await process.WaitForExitAsync(Cancellation);
        return (process.ExitCode, error);
    }

    private static string SelfSigned(TempFolder folder)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        using var certificate = new CertificateRequest("CN=home.example", key, HashAlgorithmName.SHA256).CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(1));
        var file = folder.File("home.pfx");
        File.WriteAllBytes(file, certificate.Export(X509ContentType.Pkcs12));
        return file;
    }

    private static async Task<string> CodeAsync(HomeFixture fixture)
    {
        var response = await fixture.Client.PostAsync("/api/codes", null, Cancellation);
        using var json = JsonDocument.Parse(await response.Content.ReadAsStringAsync(Cancellation));
        Assert.StartsWith("<svg", json.RootElement.GetProperty("qrSvg").GetString(), StringComparison.Ordinal);
        return json.RootElement.GetProperty("code").GetString()!;
    }

    private static async Task<HttpResponseMessage> PairAsync(HomeFixture fixture, string code)
    {
        using var content = Json(new { code, name = "phone" });
        return await fixture.Client.PostAsync("/api/pair", content, Cancellation);
    }

    private static StringContent Json(object value) => new(JsonSerializer.Serialize(value), Encoding.UTF8, "application/json");

    private static ByteArrayContent Batch(int count)
        => new(SyncBatch.Write([.. Enumerable.Range(1, count).Select(i => Writing.Line(Writing.Entry("phone", i)))])) { Headers = { ContentType = new MediaTypeHeaderValue(SyncBatch.MediaType) } };
}
