using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace Foramen.Storage.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Workshops : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<byte[]>(
                name: "about",
                table: "entry",
                type: "bytea",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "view",
                table: "device",
                type: "integer",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<int>(
                name: "workshop_id",
                table: "device",
                type: "integer",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "own_sheet",
                columns: table => new
                {
                    device_id = table.Column<int>(type: "integer", nullable: false),
                    sheet = table.Column<byte[]>(type: "bytea", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_own_sheet", x => new { x.device_id, x.sheet });
                    table.ForeignKey(
                        name: "FK_own_sheet_device_device_id",
                        column: x => x.device_id,
                        principalTable: "device",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "workshop",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    name = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    opened_at = table.Column<long>(type: "bigint", nullable: false),
                    ended_at = table.Column<long>(type: "bigint", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_workshop", x => x.id);
                });

            migrationBuilder.CreateIndex(
                name: "entry_about",
                table: "entry",
                column: "about",
                filter: "kind in ('entry.voided', 'entry.amended', 'sheet.started')");

            migrationBuilder.CreateIndex(
                name: "IX_device_workshop_id",
                table: "device",
                column: "workshop_id");

            migrationBuilder.AddForeignKey(
                name: "FK_device_workshop_workshop_id",
                table: "device",
                column: "workshop_id",
                principalTable: "workshop",
                principalColumn: "id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_device_workshop_workshop_id",
                table: "device");

            migrationBuilder.DropTable(
                name: "own_sheet");

            migrationBuilder.DropTable(
                name: "workshop");

            migrationBuilder.DropIndex(
                name: "entry_about",
                table: "entry");

            migrationBuilder.DropIndex(
                name: "IX_device_workshop_id",
                table: "device");

            migrationBuilder.DropColumn(
                name: "about",
                table: "entry");

            migrationBuilder.DropColumn(
                name: "view",
                table: "device");

            migrationBuilder.DropColumn(
                name: "workshop_id",
                table: "device");
        }
    }
}
