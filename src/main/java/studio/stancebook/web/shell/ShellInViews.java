package studio.stancebook.web.shell;

import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.stereotype.Component;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;

/** Lets every template speak of {@code shell} and {@code frame}, whoever draws it. */
@Component
class ShellInViews implements SmartInitializingSingleton {

    private final ThymeleafViewResolver resolver;
    private final Shell shell;
    private final Frame frame;

    ShellInViews(ThymeleafViewResolver resolver, Shell shell, Frame frame) {
        this.resolver = resolver;
        this.shell = shell;
        this.frame = frame;
    }

    @Override
    public void afterSingletonsInstantiated() {
        resolver.addStaticVariable("shell", shell);
        resolver.addStaticVariable("frame", frame);
    }
}
