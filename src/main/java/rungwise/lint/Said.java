package rungwise.lint;

import java.util.List;
import java.util.stream.Stream;
import rungwise.rules.said.Advice;
import rungwise.rules.said.After;
import rungwise.rules.said.Assume;
import rungwise.rules.said.Bar;
import rungwise.rules.said.Caution;
import rungwise.rules.said.Clash;
import rungwise.rules.said.Cleared;
import rungwise.rules.said.Climbed;
import rungwise.rules.said.Conclusion;
import rungwise.rules.said.Finer;
import rungwise.rules.said.FlushFirst;
import rungwise.rules.said.Gated;
import rungwise.rules.said.Halt;
import rungwise.rules.said.Hold;
import rungwise.rules.said.Leavable;
import rungwise.rules.said.Marring;
import rungwise.rules.said.MightBe;
import rungwise.rules.said.Moved;
import rungwise.rules.said.Narrow;
import rungwise.rules.said.Needless;
import rungwise.rules.said.NeighbourNote;
import rungwise.rules.said.Next;
import rungwise.rules.said.Protect;
import rungwise.rules.said.Pushes;
import rungwise.rules.said.Repeated;
import rungwise.rules.said.Replaces;
import rungwise.rules.said.Spared;
import rungwise.rules.said.Step;
import rungwise.rules.said.TreatAs;

/** What a conclusion says, whatever the figures that led to it. */
final class Said {
    private Said() {
    }

    /** Its parts, each on its own; two rules with the same parts say the same. */
    static Stream<String> parts(Conclusion one) {
        if (one instanceof Protect p) {
            return p.items().stream().map(item -> "protect " + p.method() + " " + item);
        }
        return Stream.of(said(one));
    }

    /** What somebody else may say so that this adds nothing: a bar that nothing opens goes beyond one that something does. */
    static List<String> coveredBy(String part) {
        return part.startsWith("bar ") && part.contains(" until ")
                ? List.of(part, part.substring(0, part.indexOf(" until "))) : List.of(part);
    }

    private static String said(Conclusion one) {
        if (one instanceof Bar b) {
            return "bar " + b.method() + (b.opensWith().isEmpty() ? "" : " until " + b.opensWith());
        }
        if (one instanceof Gated g) {
            return "gate " + g.method() + " " + g.gate();
        }
        if (one instanceof Moved m) {
            return "move " + m.method() + " " + m.cause() + " " + m.by();
        }
        if (one instanceof Narrow n) {
            return "narrow " + n.method() + " " + n.share() + " " + n.atMostMinutes();
        }
        if (one instanceof Caution c) {
            return "caution " + c.method() + " " + c.template();
        }
        if (one instanceof Step s) {
            return "step " + s.place() + " " + s.name();
        }
        if (one instanceof After a) {
            return "after " + a.first() + " " + a.then() + " " + a.needed();
        }
        if (one instanceof Clash c) {
            return "clash " + c.first() + " " + c.then() + " " + c.visit() + " " + c.bridge() + " " + c.waitMinutes();
        }
        if (one instanceof TreatAs t) {
            return "treat-as " + t.surface();
        }
        if (one instanceof MightBe m) {
            return "might-be " + m.surface() + " " + m.gate();
        }
        if (one instanceof Assume a) {
            return "assume " + a.fact() + " " + a.value();
        }
        if (one instanceof Hold h) {
            return "hold " + h.what();
        }
        if (one instanceof FlushFirst f) {
            return "flush " + f.method();
        }
        if (one instanceof Halt h) {
            return "halt " + h.template();
        }
        if (one instanceof Advice a) {
            return "advice " + a.about() + " " + a.template();
        }
        if (one instanceof Pushes p) {
            return "pushes " + p.first() + " " + p.later() + " " + p.waits();
        }
        if (one instanceof Finer f) {
            return "finer " + f.fine() + " " + f.coarse();
        }
        if (one instanceof Replaces r) {
            return "replaces " + r.one() + " " + r.other() + " " + r.like();
        }
        if (one instanceof Needless n) {
            return "needless " + n.method() + " " + n.instead();
        }
        if (one instanceof Spared s) {
            return "spared " + s.method();
        }
        if (one instanceof Marring m) {
            return "marring " + m.method() + " " + m.times();
        }
        if (one instanceof Climbed c) {
            return "climbed " + c.method();
        }
        if (one instanceof Repeated r) {
            return "repeated " + r.method();
        }
        if (one instanceof Cleared) {
            return "cleared";
        }
        if (one instanceof Leavable) {
            return "leavable";
        }
        if (one instanceof Next n) {
            return "next " + n.action() + " " + n.method() + " " + n.text();
        }
        NeighbourNote note = (NeighbourNote) one;
        return "neighbour " + note.surface() + " " + note.method() + " " + note.action();
    }
}
