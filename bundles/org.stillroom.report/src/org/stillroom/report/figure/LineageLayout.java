package org.stillroom.report.figure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import org.stillroom.lineage.Candidate;
import org.stillroom.lineage.Descent;
import org.stillroom.lineage.Lineage;

/**
 * Places the boxes and arrows of a lineage, earlier versions to the left of later ones.
 *
 * @param boxes where each version stands, by id
 * @param arrows where each arrow runs
 * @param bands stretches of time from left to right
 * @param width of the whole
 * @param height of the whole
 */
record LineageLayout(
        Map<String, Box> boxes, List<Arrow> arrows, List<Band> bands, double width, double height) {

    /** A stretch of time that starts at a place from the left. */
    record Band(String label, double x) {}

    /** A box of a version. */
    record Box(double x, double y, double width, double height) {}

    /**
     * An arrow from an earlier version to a later one.
     *
     * @param points x and y in turn
     * @param sure whether the one is clearly taken from the other
     * @param reprint whether it is a reprint
     */
    record Arrow(List<Double> points, boolean sure, boolean reprint) {}

    static LineageLayout of(Lineage lineage, double boxWidth, double boxHeight) {
        LayoutMetaDataService.getInstance()
                .registerLayoutMetaDataProviders(new CoreOptions(), new LayeredMetaDataProvider());
        ElkNode graph = graph();
        Map<String, ElkNode> nodes = new HashMap<>();
        Bands bands = Bands.of(lineage.descents());
        for (Descent d : lineage.descents()) {
            ElkNode node = ElkGraphUtil.createNode(graph);
            node.setDimensions(boxWidth, boxHeight);
            node.setProperty(CoreOptions.PARTITIONING_PARTITION, bands.of(d.version()));
            nodes.put(d.version().id(), node);
        }
        Map<ElkEdge, Arrow> kinds = new HashMap<>();
        lineage.descents().forEach(d -> edges(d, nodes, kinds));
        new RecursiveGraphLayoutEngine().layout(graph, new BasicProgressMonitor());
        return read(graph, nodes, kinds, bands(lineage, nodes, bands));
    }

    private static ElkNode graph() {
        ElkNode graph = ElkGraphUtil.createGraph();
        graph.setProperty(CoreOptions.ALGORITHM, "org.eclipse.elk.layered");
        graph.setProperty(CoreOptions.DIRECTION, Direction.RIGHT);
        graph.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        graph.setProperty(CoreOptions.PARTITIONING_ACTIVATE, true);
        graph.setProperty(CoreOptions.RANDOM_SEED, 1);
        graph.setProperty(CoreOptions.SEPARATE_CONNECTED_COMPONENTS, false);
        graph.setProperty(CoreOptions.SPACING_NODE_NODE, 14.0);
        graph.setProperty(CoreOptions.PADDING, new ElkPadding(16));
        return graph;
    }

    private static void edges(Descent d, Map<String, ElkNode> nodes, Map<ElkEdge, Arrow> kinds) {
        boolean tied = d.standing() == Descent.Standing.TIED;
        boolean reprint = d.standing() == Descent.Standing.REPRINT;
        if (!tied && d.parent().isEmpty()) {
            return;
        }
        int drawn = tied ? 2 : 1;
        for (Candidate c : d.candidates().stream().limit(drawn).toList()) {
            ElkNode from = nodes.get(c.parent().id());
            ElkNode to = nodes.get(d.version().id());
            if (from != null && to != null) {
                ElkEdge edge = ElkGraphUtil.createSimpleEdge(from, to);
                kinds.put(edge, new Arrow(List.of(), !tied, reprint));
            }
        }
    }

    private static List<Band> bands(Lineage lineage, Map<String, ElkNode> nodes, Bands bands) {
        Map<Integer, Double> starts = new TreeMap<>();
        for (Descent d : lineage.descents()) {
            starts.merge(bands.of(d.version()), nodes.get(d.version().id()).getX(), Math::min);
        }
        List<Band> all = new ArrayList<>();
        starts.forEach((band, x) -> all.add(new Band(bands.label(band), x)));
        return all;
    }

    private static LineageLayout read(
            ElkNode graph,
            Map<String, ElkNode> nodes,
            Map<ElkEdge, Arrow> kinds,
            List<Band> bands) {
        Map<String, Box> boxes = new HashMap<>();
        nodes.forEach(
                (id, n) -> boxes.put(id, new Box(n.getX(), n.getY(), n.getWidth(), n.getHeight())));
        List<Arrow> arrows = new ArrayList<>();
        for (ElkEdge edge : graph.getContainedEdges()) {
            Arrow kind = kinds.get(edge);
            for (ElkEdgeSection s : edge.getSections()) {
                List<Double> points = new ArrayList<>(List.of(s.getStartX(), s.getStartY()));
                s.getBendPoints().forEach(b -> points.addAll(List.of(b.getX(), b.getY())));
                points.addAll(List.of(s.getEndX(), s.getEndY()));
                arrows.add(new Arrow(List.copyOf(points), kind.sure(), kind.reprint()));
            }
        }
        return new LineageLayout(boxes, arrows, bands, graph.getWidth(), graph.getHeight());
    }
}
