using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Foramen.Home.Tests.Sync;

public class PictureTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    [Trait("Promise", "H7")]
    public async Task A_picture_in_pieces_goes_on_where_it_was_cut_and_is_whole_in_the_end()
    {
        await using var fixture = await HomeFixture.StartAsync();
        var (hash, bytes) = Jpeg(300_000);
        Assert.Equal([hash], await MissingAsync(fixture, hash));
        Assert.Equal((1_000, false), await ProgressAsync(await PutAsync(fixture, hash, bytes, 0, 1_000)));
        // A piece that does not fit changes nothing; the answer says where to go on.
        Assert.Equal((1_000, false), await ProgressAsync(await PutAsync(fixture, hash, bytes, 5_000, 1_000)));
        Assert.Equal((1_000, false), await ProgressAsync(await PutAsync(fixture, hash, bytes, 0, 1_000)));
        Assert.Equal((1_000, false), await ProgressAsync(await fixture.Client.GetAsync($"/api/pictures/{hash}/progress", Cancellation)));
        Assert.Equal(HttpStatusCode.NotFound, (await fixture.Client.GetAsync($"/api/pictures/{hash}", Cancellation)).StatusCode);
        Assert.Equal((300_000, true), await ProgressAsync(await PutAsync(fixture, hash, bytes, 1_000, 299_000)));
        Assert.Empty(await MissingAsync(fixture, hash));
        var whole = await fixture.Client.GetAsync($"/api/pictures/{hash}", Cancellation);
        Assert.Equal("image/jpeg", whole.Content.Headers.ContentType!.MediaType);
        Assert.Equal(bytes, await whole.Content.ReadAsByteArrayAsync(Cancellation));
    }

    [Fact]
    [Trait("Promise", "H7")]
    public async Task A_range_is_given_so_that_a_device_can_go_on_too()
    {
        await using var fixture = await HomeFixture.StartAsync();
        var (hash, bytes) = Jpeg(50_000);
        await PutAsync(fixture, hash, bytes, 0, bytes.Length);
        using var request = new HttpRequestMessage(HttpMethod.Get, $"/api/pictures/{hash}") { Headers = { Range = new RangeHeaderValue(40_000, null) } };
        var rest = await fixture.Client.SendAsync(request, Cancellation);
        // RFC 9110, 15.3.7.
        Assert.Equal(HttpStatusCode.PartialContent, rest.StatusCode);
        Assert.Equal(bytes[40_000..], await rest.Content.ReadAsByteArrayAsync(Cancellation));
    }

    [Fact]
    [Trait("Promise", "H7")]
    public async Task Bytes_that_do_not_hash_to_the_name_are_forgotten()
    {
        await using var fixture = await HomeFixture.StartAsync();
        var (hash, bytes) = Jpeg(2_000);
        bytes[1_500] ^= 1;
        Assert.Equal(HttpStatusCode.BadRequest, (await PutAsync(fixture, hash, bytes, 0, bytes.Length)).StatusCode);
        Assert.Equal((0, false), await ProgressAsync(await fixture.Client.GetAsync($"/api/pictures/{hash}/progress", Cancellation)));
    }

    [Theory]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>")]
    [InlineData("<?xml version='1.0'?><svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>")]
    [InlineData("<html><script>alert(1)</script></html>")]
    [InlineData("PK\u0003\u0004 a packed file that may grow")]
    [InlineData("x")]
    [Trait("Promise", "H8")]
    public async Task What_is_no_picture_by_its_bytes_is_refused_whatever_it_is_called(string content)
    {
        await using var fixture = await HomeFixture.StartAsync();
        var bytes = Encoding.UTF8.GetBytes(content);
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        Assert.Equal(HttpStatusCode.BadRequest, (await PutAsync(fixture, hash, bytes, 0, bytes.Length)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await fixture.Client.GetAsync($"/api/pictures/{hash}", Cancellation)).StatusCode);
        Assert.Empty(Files(fixture));
    }

    [Theory]
    [InlineData("..%2f..%2fjournal.sqlite")]
    [InlineData("..%2F..%2F..%2F..%2Fetc%2Fpasswd")]
    [InlineData("....//....//etc/passwd")]
    [InlineData("%2e%2e")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa%00")]
    [Trait("Promise", "H8")]
    public async Task A_name_that_is_no_hash_leads_nowhere(string name)
    {
        await using var fixture = await HomeFixture.StartAsync();
        var got = await fixture.Client.GetAsync($"/api/pictures/{name}", Cancellation);
        Assert.True(got.StatusCode is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, $"{got.StatusCode}");
        var put = await PutAsync(fixture, name, "\xFF\xD8\xFF"u8.ToArray(), 0, 3);
        Assert.True((int)put.StatusCode is 400 or 404 or 405, $"{put.StatusCode}");
        Assert.Empty(Files(fixture));
    }

    [Fact]
    [Trait("Promise", "H8")]
    public async Task A_picture_larger_than_allowed_or_than_said_is_refused()
    {
        await using var fixture = await HomeFixture.StartAsync();
        var (hash, bytes) = Jpeg(5_000);
        Assert.Equal(HttpStatusCode.BadRequest, (await PutAsync(fixture, hash, bytes, 0, 5_000, total: 300_000_000)).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await PutAsync(fixture, hash, bytes, 0, 5_000, total: 4_000)).StatusCode);
        Assert.Equal((0, false), await ProgressAsync(await fixture.Client.GetAsync($"/api/pictures/{hash}/progress", Cancellation)));
    }

    private static string[] Files(HomeFixture fixture)
        => Path.Combine(fixture.Data, "pictures") is var place && Directory.Exists(place) ? Directory.GetFiles(place, "*", SearchOption.AllDirectories) : [];

    private static (string Hash, byte[] Bytes) Jpeg(int length)
    {
        var bytes = new byte[length];
        new Random(length).NextBytes(bytes);
        // Start of image and a first marker, ITU-T T.81.
        ((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF, 0xE0]).CopyTo(bytes);
        return (Convert.ToHexStringLower(SHA256.HashData(bytes)), bytes);
    }

    private static async Task<HttpResponseMessage> PutAsync(HomeFixture fixture, string hash, byte[] bytes, int offset, int length, long? total = null)
    {
        using var content = new ByteArrayContent(bytes, offset, length) { Headers = { ContentType = new MediaTypeHeaderValue("application/octet-stream") } };
        return await fixture.Client.PutAsync($"/api/pictures/{hash}?offset={offset}&total={total ?? bytes.Length}", content, Cancellation);
    }

    private static async Task<(long Offset, bool Complete)> ProgressAsync(HttpResponseMessage response)
    {
        using var json = JsonDocument.Parse(await response.Content.ReadAsStringAsync(Cancellation));
        return (json.RootElement.GetProperty("offset").GetInt64(), json.RootElement.GetProperty("complete").GetBoolean());
    }

    private static async Task<string[]> MissingAsync(HomeFixture fixture, params string[] hashes)
    {
        using var content = new StringContent(JsonSerializer.Serialize(new { hashes }), Encoding.UTF8, "application/json");
        using var json = JsonDocument.Parse(await (await fixture.Client.PostAsync("/api/pictures/missing", content, Cancellation)).Content.ReadAsStringAsync(Cancellation));
        return [.. json.RootElement.GetProperty("hashes").EnumerateArray().Select(one => one.GetString()!)];
    }
}
