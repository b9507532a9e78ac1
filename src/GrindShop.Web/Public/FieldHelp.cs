namespace GrindShop.Web.Public;

/// <summary>What each field of the form means, for somebody who has never ordered a cam: what it is, what it does, where to find it.</summary>
public static class FieldHelp
{
    private static readonly Dictionary<string, string> Texts = new()
    {
        ["engineFamily"] = "The engine decides where the lobes stand along the shaft, how thick the shaft may be, and which blanks (unground cams) there are. If yours is not in the list, ask the shop.",
        ["side"] = "An engine with a camshaft over each bank of cylinders has a left and a right one; they are not the same part.",
        ["lifter"] = "The part that rides on the lobe. A roller has a wheel, a flat tappet slides on its foot. A hydraulic one takes up its own play with oil; a solid one needs a set play, the lash. If you are not sure, look at the old ones or ask the engine builder: the kinds do not run on each other's cams.",
        ["followerDiameterIn"] = "Measure the wheel of the roller, or the foot of the flat tappet, across. Leave it empty and the usual size of this engine is taken. The shape that has to be ground depends on it.",
        ["rockerRatio"] = "The rocker arm moves the valve further than the lifter moves: 1.5 to 1 means one and a half times. It is usually written on the rocker or its box.",
        ["distributorGear"] = "The distributor is driven by a gear on the cam. The wrong pair of gears wears out fast and takes the engine with it. Leave it open if you do not know: the answer says what may run.",
        ["maxBaseCircleDiameterIn"] = "The base circle is the round part of the lobe. With a long stroke the connecting rods may come near the cam, and then it must stay small. Leave it empty unless your builder gave you a number.",
        ["firingOrder"] = "The order in which the cylinders fire, starting with 1. The lobes are placed for it. Only fill it in if yours differs from the usual one.",
        ["durationAt050CrankDeg"] = "How long the lobe holds its lifter more than .050 inch up, counted in degrees of the crankshaft (two turns are 720). Longer moves the power to higher speed and makes the idle rougher. It stands on the card of nearly every cam.",
        ["lobeLiftIn"] = "How far the lobe raises the lifter. More lift lets in more air, and asks more of springs and guides. Multiplied by the rocker ratio it is the valve lift. Give this or the valve lift.",
        ["valveLiftIn"] = "How far the valve opens, before any lash is taken off: lobe lift times rocker ratio. Give it instead of the lobe lift if that is the figure you know.",
        ["advertisedDurationCrankDeg"] = "The duration that advertisements name: counted from a very small lift, so it is the larger of the two figures. Together with the one at .050 it says how fast the lobe opens. Leave it empty and the shop takes its usual ramps.",
        ["advertisedAtIn"] = "At which lift the advertised duration is counted: usually .006 inch for hydraulic and .020 inch for solid lifters. Leave it empty unless your card says otherwise.",
        ["lashIn"] = "The play that a solid lifter needs between rocker and valve. The maker of the valve train says how much; say in the notes if it is meant cold.",
        ["lobeSeparationCamDeg"] = "The angle between the middle of the intake lobe and the middle of the exhaust lobe, in degrees of the cam. A small one makes the valves overlap more: a rougher idle and more in the middle speeds. A large one idles smoother. It is ground in and cannot be changed later.",
        ["intakeCenterlineCrankDeg"] = "Where the intake lobe stands at its highest, in crank degrees after the piston is at the top. It is what one checks when the cam is fitted. Give this or the advance.",
        ["advanceCrankDeg"] = "By how much the intake comes earlier than an even split: lobe separation less intake centreline. A little advance helps at low speed.",
        ["use"] = "What the engine does for a living. The shop reads it and tells you if the figures do not suit.",
        ["notes"] = "Anything that does not fit elsewhere: spring loads, cylinder heads, what the old cam was, a date you need it by.",
        ["start.use"] = "The shop's rules of thumb shift duration and lobe separation by it.",
        ["start.displacement"] = "The larger a cylinder, the more air it needs, and the longer a cam it takes for the same speed.",
        ["start.from"] = "The lowest speed from which you want it to pull, in turns of the crank a minute. A long cam gives away pull down there.",
        ["start.to"] = "The highest speed at which it should still pull. This decides the duration more than anything else.",
        ["start.idle"] = "Rough means that the engine shakes and is heard at idle; it comes with overlap. Power brakes and automatic gearboxes want it smooth.",
    };

    /// <summary>Null for a field that explains itself. Both lobes share one text.</summary>
    public static string? Of(string path) => Texts.GetValueOrDefault(path) ?? Texts.GetValueOrDefault(path.Split('.')[^1]);
}
