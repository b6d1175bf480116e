package org.stillroom.workbench.tests;

import java.util.Map;
import org.eclipse.core.runtime.IProduct;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.Bundle;

/** Starts the workbench with its own product's properties and with given arguments. */
final class StartContext implements IApplicationContext {
    private final IProduct product = Platform.getProduct();
    private final String[] arguments;

    StartContext(String... arguments) {
        this.arguments = arguments;
    }

    @Override
    public Map<String, Object> getArguments() {
        return Map.of(APPLICATION_ARGS, arguments);
    }

    @Override
    public void applicationRunning() {
        // no splash to take away
    }

    @Override
    public String getBrandingApplication() {
        return product.getApplication();
    }

    @Override
    public String getBrandingName() {
        return product.getName();
    }

    @Override
    public String getBrandingDescription() {
        return product.getDescription();
    }

    @Override
    public String getBrandingId() {
        return product.getId();
    }

    @Override
    public String getBrandingProperty(String key) {
        return product.getProperty(key);
    }

    @Override
    public Bundle getBrandingBundle() {
        return product.getDefiningBundle();
    }

    @Override
    public void setResult(Object result, org.eclipse.equinox.app.IApplication application) {
        // the result is returned by start
    }
}
