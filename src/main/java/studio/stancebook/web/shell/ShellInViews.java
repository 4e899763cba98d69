package studio.stancebook.web.shell;

import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.stereotype.Component;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;

/** Lets every template speak of {@code shell}, whoever draws it. */
@Component
class ShellInViews implements SmartInitializingSingleton {

    private final ThymeleafViewResolver resolver;
    private final Shell shell;

    ShellInViews(ThymeleafViewResolver resolver, Shell shell) {
        this.resolver = resolver;
        this.shell = shell;
    }

    @Override
    public void afterSingletonsInstantiated() {
        resolver.addStaticVariable("shell", shell);
    }
}
