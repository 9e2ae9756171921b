using Foramen.Journal.Bodies;
using Microsoft.EntityFrameworkCore;

namespace Foramen.Storage.Model;

/// <summary>The tables, the same on both databases; each database has its own context because its migrations differ.</summary>
internal abstract class HomeContext(DbContextOptions options) : DbContext(options)
{
    public DbSet<StoredEntry> Entries => Set<StoredEntry>();

    public DbSet<StoredFact> Facts => Set<StoredFact>();

    public DbSet<StoredDevice> Devices => Set<StoredDevice>();

    public DbSet<StoredWorkshop> Workshops => Set<StoredWorkshop>();

    public DbSet<StoredOwnSheet> OwnSheets => Set<StoredOwnSheet>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<StoredEntry>(entry =>
        {
            entry.ToTable("entry");
            entry.HasKey(one => one.Arrival);
            entry.Property(one => one.Arrival).HasColumnName("arrival").ValueGeneratedNever();
            entry.Property(one => one.Mark).HasColumnName("mark");
            entry.Property(one => one.EntryId).HasColumnName("entry_id");
            entry.Property(one => one.Hash).HasColumnName("hash");
            entry.Property(one => one.Kind).HasColumnName("kind").HasMaxLength(64);
            entry.Property(one => one.BroughtBy).HasColumnName("brought_by");
            entry.Property(one => one.Line).HasColumnName("line");
            entry.Property(one => one.About).HasColumnName("about");
            entry.HasIndex(one => new { one.EntryId, one.Hash }).IsUnique().HasDatabaseName("entry_identity");
            // Only what is looked for by its topic; most entries cost no second index.
            entry.HasIndex(one => one.About).HasFilter($"kind in ('{EntryKind.EntryVoided}', '{EntryKind.EntryAmended}', '{EntryKind.SheetStarted}')").HasDatabaseName("entry_about");
        });
        modelBuilder.Entity<StoredFact>(fact =>
        {
            fact.ToTable("fact");
            fact.HasKey(one => one.Name);
            fact.Property(one => one.Name).HasColumnName("name").HasMaxLength(64);
            fact.Property(one => one.Value).HasColumnName("value");
        });
        modelBuilder.Entity<StoredDevice>(device =>
        {
            device.ToTable("device");
            device.HasKey(one => one.Id);
            device.Property(one => one.Id).HasColumnName("id");
            device.Property(one => one.Name).HasColumnName("name").HasMaxLength(100);
            device.Property(one => one.TokenHash).HasColumnName("token_hash");
            device.Property(one => one.PairedAtUnixMilliseconds).HasColumnName("paired_at");
            device.Property(one => one.LastMetUnixMilliseconds).HasColumnName("last_met");
            device.Property(one => one.RevokedAtUnixMilliseconds).HasColumnName("revoked_at");
            device.Property(one => one.WorkshopId).HasColumnName("workshop_id");
            device.Property(one => one.View).HasColumnName("view").HasDefaultValue(0);
            device.HasOne<StoredWorkshop>().WithMany().HasForeignKey(one => one.WorkshopId).OnDelete(DeleteBehavior.Restrict);
            device.HasIndex(one => one.TokenHash).IsUnique().HasDatabaseName("device_token");
        });
        modelBuilder.Entity<StoredWorkshop>(workshop =>
        {
            workshop.ToTable("workshop");
            workshop.HasKey(one => one.Id);
            workshop.Property(one => one.Id).HasColumnName("id");
            workshop.Property(one => one.Name).HasColumnName("name").HasMaxLength(100);
            workshop.Property(one => one.OpenedAtUnixMilliseconds).HasColumnName("opened_at");
            workshop.Property(one => one.EndedAtUnixMilliseconds).HasColumnName("ended_at");
        });
        modelBuilder.Entity<StoredOwnSheet>(own =>
        {
            own.ToTable("own_sheet");
            own.HasKey(one => new { one.DeviceId, one.Sheet });
            own.Property(one => one.DeviceId).HasColumnName("device_id");
            own.Property(one => one.Sheet).HasColumnName("sheet");
            own.HasOne<StoredDevice>().WithMany().HasForeignKey(one => one.DeviceId).OnDelete(DeleteBehavior.Restrict);
        });
    }
}
