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
    /// <param name="name">What its owner calls it; in a workshop, the person's name.</param>
    /// <param name="now">The instant.</param>
    /// <param name="workshop">The workshop it joins; null for a device of the household.</param>
    /// <param name="cancellation">Stops.</param>
    /// <exception cref="RefusalException">The name is empty or too long, or the workshop has ended.</exception>
    public async Task<(PairedDevice Device, string Token)> AddAsync(string name, DateTimeOffset now, int? workshop = null, CancellationToken cancellation = default)
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
            WorkshopId = workshop,
        };
        await guarded(async () =>
        {
            await using var context = newContext();
            if (workshop is { } id && !await context.Workshops.AnyAsync(one => one.Id == id && one.EndedAtUnixMilliseconds == null, cancellation))
            {
                throw new RefusalException("This workshop has ended.");
            }

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

    /// <summary>Whether a device of this number is or was a member of a workshop.</summary>
    public async Task<bool> IsMemberAsync(int id, CancellationToken cancellation = default) => (bool)(await guarded(async () =>
    {
        await using var context = newContext();
        return await context.Devices.AnyAsync(one => one.Id == id && one.WorkshopId != null, cancellation);
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
        DateTimeOffset.FromUnixTimeMilliseconds(stored.LastMetUnixMilliseconds), stored.RevokedAtUnixMilliseconds is not null, stored.WorkshopId, stored.View);
}
