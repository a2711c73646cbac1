package org.roofspring.site.internal;

import java.util.List;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;
import org.eclipse.emf.ecore.resource.Resource;

/**
 * Base of every object of the model. It can be frozen for good: from then on any write throws
 * {@link IllegalStateException} before anything has changed, and reads change nothing inside, so that many threads may
 * read at once.
 *
 * <p>All values pass {@link #dynamicSet} and {@link #dynamicUnset}, because the generated code delegates to reflection;
 * lists ask {@link #eNotificationRequired} before each change.
 */
public class FreezableObject extends MinimalEObjectImpl.Container {
    private boolean frozen;

    /** Freezes this object alone; its lists are made now, since they are otherwise made by the first reader. */
    public final void freeze() {
        for (EStructuralFeature feature : eClass().getEAllStructuralFeatures()) {
            if (feature.isMany()) {
                ((List<?>) eGet(feature)).size();
            }
        }
        frozen = true;
    }

    /** Whether this object can no longer be changed. */
    public final boolean isFrozen() {
        return frozen;
    }

    private void requireThawed() {
        if (frozen) {
            throw new IllegalStateException("this " + eClass().getName()
                    + " belongs to a snapshot and cannot be changed");
        }
    }

    @Override
    public boolean eNotificationRequired() {
        requireThawed();
        return super.eNotificationRequired();
    }

    @Override
    public void dynamicSet(int dynamicFeatureId, Object newValue) {
        requireThawed();
        super.dynamicSet(dynamicFeatureId, newValue);
    }

    @Override
    public void dynamicUnset(int dynamicFeatureId) {
        requireThawed();
        super.dynamicUnset(dynamicFeatureId);
    }

    @Override
    protected void eBasicSetContainer(InternalEObject newContainer, int newContainerFeatureId) {
        requireThawed();
        super.eBasicSetContainer(newContainer, newContainerFeatureId);
    }

    @Override
    protected void eSetDirectResource(Resource.Internal resource) {
        requireThawed();
        super.eSetDirectResource(resource);
    }

    @Override
    public void eSetProxyURI(URI uri) {
        requireThawed();
        super.eSetProxyURI(uri);
    }

    /** What it is, its name and its identifier, such as {@code Tank "Cistern" (tank-3k9f)}. */
    @Override
    public String toString() {
        Object name = value("name");
        Object id = value("id");
        return eClass().getName() + (name == null ? "" : " \"" + name + "\"") + (id == null ? "" : " (" + id + ")");
    }

    private Object value(String featureName) {
        EStructuralFeature feature = eClass().getEStructuralFeature(featureName);
        return feature == null ? null : eGet(feature);
    }

    @Override
    public EList<Adapter> eAdapters() {
        return frozen ? ECollections.emptyEList() : super.eAdapters();
    }
}
