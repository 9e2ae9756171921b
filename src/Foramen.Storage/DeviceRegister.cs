using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Foramen.Engine.Quantities;
using Foramen.Storage.Model;
using Microsoft.EntityFrameworkCore;

namespace Foramen.Storage;

/// <summary>The paired devices. A token is shown once, to the device it is for; here only its hash is kept.</summary>
public sealed class DeviceRegister
{
    /// <summary>Longest name of a device.</summary>
    public const int MaxNameLength = 100;

    private const int TokenBytes = 32;
    private readonly Func<HomeContext> newContext;
    private readonly Func<Func<Task<object?>>, Task<object?>> guarded;

    internal DeviceRegister(Func<HomeContext> newContext, Func<Func<Task<object?>>, Task<object?>> guarded) => (this.newContext, this.guarded) = (newContext, guarded);

    /// <summary>Enters a device and draws its token: 256 bits of chance.</summary>
    /// <exception cref="RefusalException">The name is empty or too long.</exception>
    public async Task<(PairedDevice Device, string Token)> AddAsync(string name, DateTimeOffset now, CancellationToken cancellation = default)
    {
        name = name.Trim();
        if (name.Length is 0 or > MaxNameLength || name.Any(char.IsControl))
        {
            throw new RefusalException($"A device has a name of 1 to {MaxNameLength} characters on one line.");
        }

        var token = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(TokenBytes));
        var stored = new StoredDevice
        {
            Name = name, TokenHash = HashOf(token), PairedAtUnixMilliseconds = now.ToUnixTimeMilliseconds(), LastMetUnixMilliseconds = now.ToUnixTimeMilliseconds(),
        };
        await guarded(async () =>
        {
            await using var context = newContext();
            context.Devices.Add(stored);
            await context.SaveChangesAsync(cancellation);
            return null;
        });
        return (Device(stored), token);
    }

    /// <summary>The device a token belongs to, if it holds.</summary>
    public async Task<PairedDevice?> FindAsync(string token, DateTimeOffset now, CancellationToken cancellation = default)
    {
        // The hash of a long random token tells nothing by how long its comparison takes.
        var hash = HashOf(token);
        return (PairedDevice?)await guarded(async () =>
        {
            await using var context = newContext();
            var stored = await context.Devices.FirstOrDefaultAsync(one => one.TokenHash == hash && one.RevokedAtUnixMilliseconds == null, cancellation);
            if (stored is null)
            {
                return null;
            }

            var met = now.ToUnixTimeMilliseconds();
            // Written at most once a minute: it must not make every reading a write.
            if (met - stored.LastMetUnixMilliseconds > 60_000)
            {
                await context.Devices.Where(one => one.Id == stored.Id).ExecuteUpdateAsync(set => set.SetProperty(one => one.LastMetUnixMilliseconds, met), cancellation);
            }

            return Device(stored);
        });
    }

    /// <summary>All devices, also those whose token was taken back.</summary>
    public async Task<IReadOnlyList<PairedDevice>> AllAsync(CancellationToken cancellation = default)
        => (IReadOnlyList<PairedDevice>)(await guarded(async () =>
        {
            await using var context = newContext();
            return (await context.Devices.AsNoTracking().OrderBy(one => one.Id).ToListAsync(cancellation)).ConvertAll(Device);
        }))!;

    /// <summary>Takes a device's token back, for good.</summary>
    /// <returns>Whether there was such a device.</returns>
    public async Task<bool> RevokeAsync(int id, DateTimeOffset now, CancellationToken cancellation = default)
        => (bool)(await guarded(async () =>
        {
            await using var context = newContext();
            var at = now.ToUnixTimeMilliseconds();
            return await context.Devices.Where(one => one.Id == id)
                .ExecuteUpdateAsync(set => set.SetProperty(one => one.RevokedAtUnixMilliseconds, one => one.RevokedAtUnixMilliseconds ?? at), cancellation) > 0;
        }))!;

    private static byte[] HashOf(string token) => SHA256.HashData(Encoding.UTF8.GetBytes(token));

    private static PairedDevice Device(StoredDevice stored) => new(
        stored.Id, stored.Name, DateTimeOffset.FromUnixTimeMilliseconds(stored.PairedAtUnixMilliseconds),
        DateTimeOffset.FromUnixTimeMilliseconds(stored.LastMetUnixMilliseconds), stored.RevokedAtUnixMilliseconds is not null);
}
