package org.stillroom.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.codecs.Codec;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import org.jfree.chart.ChartFactory;
import org.jfree.chart.JFreeChart;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.wiring.FrameworkWiring;

/**
 * What only a running framework shows: that our bundles resolve and start, and that the libraries
 * which look for their parts at run time find them across bundle borders.
 */
class WiringTest {

    private static final List<String> ENGINE =
            List.of(
                    "model",
                    "measures",
                    "ingredients",
                    "library",
                    "reading",
                    "search",
                    "lineage",
                    "drift",
                    "inquiry",
                    "report",
                    "cli");

    private final BundleContext context =
            FrameworkUtil.getBundle(WiringTest.class).getBundleContext();

    record Jigger(String word, List<Integer> millilitres) {}

    @TestFactory
    Stream<DynamicTest> everyEngineBundleStarts() {
        return ENGINE.stream().map(name -> DynamicTest.dynamicTest(name, () -> start(name)));
    }

    private void start(String name) throws Exception {
        Bundle bundle = ours(name);
        bundle.start(Bundle.START_TRANSIENT);
        assertEquals(Bundle.ACTIVE, bundle.getState(), name);
    }

    private Bundle ours(String name) {
        return Stream.of(context.getBundles())
                .filter(b -> b.getSymbolicName().equals("org.stillroom." + name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("not installed: org.stillroom." + name));
    }

    @Test
    void everyInstalledBundleResolves() {
        FrameworkWiring wiring = context.getBundle(0).adapt(FrameworkWiring.class);
        List<String> unresolved = new ArrayList<>();
        for (Bundle bundle : context.getBundles()) {
            if (bundle.getState() == Bundle.INSTALLED && !wiring.resolveBundles(List.of(bundle))) {
                unresolved.add(bundle.toString());
            }
        }
        assertEquals(List.of(), unresolved);
    }

    /** A component without its description is silently no component at all. */
    @Test
    void bundlesThatDeclareComponentsShipTheirDescriptions() {
        for (String name : ENGINE) {
            Bundle bundle = ours(name);
            String header = bundle.getHeaders().get("Service-Component");
            if (header == null) {
                continue;
            }
            for (String path : header.split("\\s*,\\s*")) {
                URL description = bundle.getEntry(path);
                assertTrue(description != null, name + " lacks " + path);
            }
        }
    }

    @Test
    void jacksonReadsBackTheRecordItWrote() throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        Jigger jigger = new Jigger("jigger", List.of(44, 60));
        String text = mapper.writeValueAsString(jigger);
        assertEquals("{\"word\":\"jigger\",\"millilitres\":[44,60]}", text);
        assertEquals(jigger, mapper.readValue(text, Jigger.class));
    }

    @Test
    void luceneFindsItsCodecAndItsOwnWords() throws IOException {
        assertFalse(Codec.availableCodecs().isEmpty());
        try (Directory directory = new ByteBuffersDirectory();
                Analyzer analyzer = new StandardAnalyzer()) {
            try (IndexWriter writer = new IndexWriter(directory, new IndexWriterConfig(analyzer))) {
                Document recipe = new Document();
                recipe.add(new TextField("words", "a wineglass of gin", Field.Store.YES));
                writer.addDocument(recipe);
            }
            try (DirectoryReader reader = DirectoryReader.open(directory)) {
                IndexSearcher searcher = new IndexSearcher(reader);
                assertEquals(1, searcher.count(new TermQuery(new Term("words", "gin"))));
                assertEquals(0, searcher.count(new TermQuery(new Term("words", "rum"))));
            }
        }
    }

    @Test
    void elkLaysOutAParentLeftOfItsChild() {
        LayoutMetaDataService.getInstance()
                .registerLayoutMetaDataProviders(new CoreOptions(), new LayeredMetaDataProvider());
        ElkNode graph = ElkGraphUtil.createGraph();
        graph.setProperty(CoreOptions.ALGORITHM, "org.eclipse.elk.layered");
        ElkNode parent = ElkGraphUtil.createNode(graph);
        ElkNode child = ElkGraphUtil.createNode(graph);
        parent.setDimensions(40, 20);
        child.setDimensions(40, 20);
        ElkGraphUtil.createSimpleEdge(parent, child);
        new RecursiveGraphLayoutEngine().layout(graph, new BasicProgressMonitor());
        assertTrue(parent.getX() + parent.getWidth() < child.getX());
    }

    @Test
    void jfreechartDrawsWithoutADisplay() {
        XYSeries series = new XYSeries("share");
        series.add(1862, 0.5);
        series.add(1895, 0.33);
        JFreeChart chart =
                ChartFactory.createXYLineChart(
                        "drift", "year", "share", new XYSeriesCollection(series));
        assertEquals(200, chart.createBufferedImage(300, 200).getHeight());
    }
}
