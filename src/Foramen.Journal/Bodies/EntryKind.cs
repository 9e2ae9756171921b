namespace Foramen.Journal.Bodies;

/// <summary>The kinds of entries this version knows.</summary>
public static class EntryKind
{
    /// <summary>A camera was described, or described anew.</summary>
    public const string CameraDefined = "camera.defined";

    /// <summary>A box of paper was described, or described anew.</summary>
    public const string PaperDefined = "paper.defined";

    /// <summary>A place was described, or described anew.</summary>
    public const string PlaceDefined = "place.defined";

    /// <summary>A day out began.</summary>
    public const string OutingStarted = "outing.started";

    /// <summary>A sheet began its life.</summary>
    public const string SheetStarted = "sheet.started";

    /// <summary>A photograph of the subject was added to a sheet.</summary>
    public const string PhotographAdded = "photograph.added";

    /// <summary>The frame of a sheet was chosen.</summary>
    public const string FrameChosen = "frame.chosen";

    /// <summary>A tone was read, or read again.</summary>
    public const string ToneRead = "tone.read";

    /// <summary>A tone was taken off the ladder.</summary>
    public const string ToneRemoved = "tone.removed";

    /// <summary>A region of the photograph was marked as moving.</summary>
    public const string MotionMarked = "motion.marked";

    /// <summary>A moving region was unmarked.</summary>
    public const string MotionRemoved = "motion.removed";

    /// <summary>What a moving region shows began to move.</summary>
    public const string MotionStarted = "motion.started";

    /// <summary>What a moving region shows stopped moving.</summary>
    public const string MotionStopped = "motion.stopped";

    /// <summary>Time and flash were decided.</summary>
    public const string PlanMade = "plan.made";

    /// <summary>The flash began.</summary>
    public const string FlashStarted = "flash.started";

    /// <summary>The flash ended.</summary>
    public const string FlashFinished = "flash.finished";

    /// <summary>The hole was opened.</summary>
    public const string HoleOpened = "hole.opened";

    /// <summary>The light changed while the hole was open.</summary>
    public const string LightChanged = "light.changed";

    /// <summary>The hole was closed.</summary>
    public const string HoleClosed = "hole.closed";

    /// <summary>A processing run began.</summary>
    public const string BathStarted = "bath.started";

    /// <summary>A step of the processing run began; the one before it ended.</summary>
    public const string BathStep = "bath.step";

    /// <summary>The processing run ended.</summary>
    public const string BathFinished = "bath.finished";

    /// <summary>The print was judged.</summary>
    public const string PrintJudged = "print.judged";

    /// <summary>A scan or photograph of the print was added.</summary>
    public const string ScanAdded = "scan.added";

    /// <summary>A bottle of developer or fixer was mixed.</summary>
    public const string BottleMixed = "bottle.mixed";

    /// <summary>Used solution was poured away and fresh added.</summary>
    public const string BottleToppedUp = "bottle.toppedUp";

    /// <summary>The thermometer in a bottle was read.</summary>
    public const string BottleWarmthRead = "bottle.warmthRead";

    /// <summary>The solution stands in the open from here on.</summary>
    public const string BottleOpened = "bottle.opened";

    /// <summary>The solution stands closed from here on.</summary>
    public const string BottleClosed = "bottle.closed";

    /// <summary>A bottle was given up.</summary>
    public const string BottleDiscarded = "bottle.discarded";

    /// <summary>A sheet was developed in a bottle.</summary>
    public const string SheetDeveloped = "sheet.developed";

    /// <summary>A sheet was fixed in a bottle.</summary>
    public const string SheetFixed = "sheet.fixed";

    /// <summary>A kit was planned and its packing list kept.</summary>
    public const string KitPlanned = "kit.planned";

    /// <summary>A line of a packing list was checked off, or taken out again.</summary>
    public const string KitPacked = "kit.packed";

    /// <summary>A camera's hole was measured.</summary>
    public const string HoleMeasured = "hole.measured";

    /// <summary>A camera's focal distance was measured.</summary>
    public const string ChamberMeasured = "chamber.measured";

    /// <summary>A mask was described, or described anew.</summary>
    public const string MaskDefined = "mask.defined";

    /// <summary>A test strip was made.</summary>
    public const string StripMade = "strip.made";

    /// <summary>A test strip was read.</summary>
    public const string StripRead = "strip.read";

    /// <summary>An entry was declared void.</summary>
    public const string EntryVoided = "entry.voided";

    /// <summary>An entry was given another body.</summary>
    public const string EntryAmended = "entry.amended";
}
