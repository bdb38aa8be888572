package org.pumpwright.host.curve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.FlowRate;

/** Reads what a curve's file may leave out. Thread-safe. */
final class CurveExtras {
    private CurveExtras() {}

    static Interpolation interpolation(Node file) {
        boolean monotone = file.find("interpolation")
                .map(node -> node.text().equals(Interpolation.MONOTONE.word()))
                .orElse(false);
        return monotone ? Interpolation.MONOTONE : Interpolation.LINEAR;
    }

    static Optional<Basis> basis(Node file) {
        return file.find("basis")
                .map(node -> new Basis(
                        node.text("plan"),
                        node.whole("runs"),
                        Days.of(node.at("first_run")),
                        Days.of(node.at("last_run")),
                        node.text("known_good_by"),
                        node.whole("joint_features"),
                        runIds(node)));
    }

    private static List<String> runIds(Node basis) {
        return basis.find("run_ids").map(Node::items).orElse(List.of()).stream()
                .map(Node::text)
                .toList();
    }

    static Optional<Approval> approval(Node file) {
        Optional<Node> approval = file.find("approval");
        approval.filter(node -> Names.same(node.text("by"), file.text("author")))
                .ifPresent(node -> node.at("by")
                        .refuse("is " + node.at("by").found() + ", who is the author: another person approves"));
        return approval.map(node -> new Approval(node.text("by"), Days.of(node.at("on"))));
    }

    static CurveLines lines(Node file, String onShelf) {
        return new CurveLines(
                onShelf,
                file.at("points").items().stream().map(Node::line).toList(),
                file.find("limit_sets").map(Node::items).orElse(List.of()).stream()
                        .map(set -> new CurveLines.SetLines(
                                set.at("guard_factor").line(),
                                set.at("limits").items().stream()
                                        .map(Node::line)
                                        .toList()))
                        .toList());
    }

    static Optional<SpreadParts> parts(Node point, String key) {
        return point.find(key)
                .map(node -> new SpreadParts(
                        node.number("unit_percent") / 100,
                        node.number("run_percent") / 100,
                        node.number("mean_uncertainty_percent") / 100,
                        node.number("degrees_of_freedom"),
                        node.number("own_tolerance_factor")));
    }

    static List<LimitSet> limitSets(Node file) {
        return file.find("limit_sets").map(Node::items).orElse(List.of()).stream()
                .map(CurveExtras::limitSet)
                .toList();
    }

    private static LimitSet limitSet(Node node) {
        return new LimitSet(
                node.text("name"),
                node.text("source"),
                node.text("set_by"),
                node.number("guard_factor"),
                node.at("limits").items().stream().map(CurveExtras::limit).toList());
    }

    private static LimitSet.Limit limit(Node node) {
        boolean flow = node.text("quantity").equals(LimitSet.Quantity.FLOW.word());
        for (String end : List.of("low_", "high_")) {
            node.find(end + (flow ? "amps" : "gpm"))
                    .ifPresent(other -> other.refuse("does not belong to the quantity "
                            + node.at("quantity").found()));
        }
        return new LimitSet.Limit(
                flow ? LimitSet.Quantity.FLOW : LimitSet.Quantity.MOTOR_AMPS,
                node.number("effective_volts"),
                end(node, "low_", flow),
                end(node, "high_", flow));
    }

    private static OptionalDouble end(Node node, String end, boolean flow) {
        Optional<Double> value = node.find(end + (flow ? "gpm" : "amps")).map(Node::number);
        return value.map(number -> OptionalDouble.of(
                        flow ? FlowRate.ofGallonsPerMinute(number).m3PerSecond() : number))
                .orElse(OptionalDouble.empty());
    }
}
