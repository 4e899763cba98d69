package studio.stancebook.drawing.rendering;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import org.thymeleaf.templateresolver.StringTemplateResolver;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.drawing.strip.BandStrip;

/** The template engine as the server sets it up, without the server. */
public final class Renderer {

    private final SpringTemplateEngine engine = new SpringTemplateEngine();

    public Renderer() {
        ClassLoaderTemplateResolver files = new ClassLoaderTemplateResolver();
        files.setPrefix("templates/");
        files.setSuffix(".html");
        files.setCharacterEncoding("UTF-8");
        files.setCheckExistence(true);
        files.setOrder(1);
        StringTemplateResolver strings = new StringTemplateResolver();
        strings.setOrder(2);
        engine.addTemplateResolver(files);
        engine.addTemplateResolver(strings);
        engine.addDialect(new DrawingDialect());
        ResourceBundleMessageSource words = new ResourceBundleMessageSource();
        words.setBasename("messages/drawing");
        words.setDefaultEncoding("UTF-8");
        words.setFallbackToSystemLocale(false);
        engine.setTemplateEngineMessageSource(words);
    }

    public SideViewSvg files() {
        return new SideViewSvg(engine);
    }

    /** A fragment such as {@code fragments/side-view :: side-view(${view})}. */
    String fragment(String fragment, Map<String, Object> model) {
        Context context = new Context(Locale.getDefault(), model);
        return engine.process("<th:block th:replace=\"~{" + fragment + "}\"></th:block>", context)
                .strip();
    }

    public String sideView(SideView view) {
        return fragment("fragments/side-view :: side-view(${view})", Map.of("view", view));
    }

    public String thumbnail(Sheet sheet) {
        return fragment("fragments/side-view :: thumbnail(${sheet}, '')", Map.of("sheet", sheet));
    }

    public String strip(BandStrip strip) {
        return fragment("fragments/band-strip :: band-strip(${strip})", Map.of("strip", strip));
    }

    /** Fails when {@code text} is not well-formed XML. */
    public static Document parsed(String text) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        } catch (SAXException | IOException | ParserConfigurationException failure) {
            throw new AssertionError(failure.getMessage() + " in " + text, failure);
        }
    }
}
