package org.bondspan.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.NotPermitted;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.Medium;
import org.bondspan.site.SitePath.NeverCarries;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.junit.jupiter.api.Test;

/** Footing rebar, gas pipe and roof deck cannot become carriers: the types have no place for them. */
class CarrierTypesTest {

    @Test
    void whatNeverCarriesIsOfAnotherTypeThanWhatMay() {
        assertThat(SitePath.class.isSealed()).isTrue();
        assertThat(SitePath.class.getPermittedSubclasses())
                .containsExactlyInAnyOrder(SitePath.MayCarry.class, NeverCarries.class);
        assertThat(SitePath.MayCarry.class.isAssignableFrom(NeverCarries.class)).isFalse();
        assertThat(NeverCarries.class.isRecord())
                .as("final, so no subclass may")
                .isTrue();
    }

    @Test
    void onlyTheseMediaMayCarry() {
        assertThat(SitePath.MayCarry.class.isSealed()).isTrue();
        assertThat(SitePath.MayCarry.class.getPermittedSubclasses())
                .containsExactlyInAnyOrder(
                        CopperLine.class,
                        InstalledConductor.class,
                        StructuralFrame.class,
                        WaterPiping.class,
                        RingPath.class);
        assertThat(SitePath.MayCarry.class.getPermittedSubclasses()).allMatch(Class::isRecord);
    }

    @Test
    void rebarGasPipeAndDeckAreMediaThatNeverCarry() {
        assertThat(Arrays.stream(Medium.values()).map(Medium::label))
                .containsExactlyInAnyOrder("footing-rebar", "gas-pipe", "roof-deck", "other");
    }

    @Test
    void carriersHoldFramesPipesAndRingsAlone() {
        assertThat(Carrier.class.isSealed()).isTrue();
        assertThat(Carrier.class.getPermittedSubclasses())
                .containsExactlyInAnyOrder(Carrier.Frame.class, Carrier.Pipe.class, Carrier.Ring.class);
        Map<Class<?>, Class<?>> paths = Arrays.stream(Carrier.class.getPermittedSubclasses())
                .collect(Collectors.toMap(carrier -> carrier, CarrierTypesTest::pathType));
        assertThat(paths)
                .containsOnly(
                        Map.entry(Carrier.Frame.class, StructuralFrame.class),
                        Map.entry(Carrier.Pipe.class, WaterPiping.class),
                        Map.entry(Carrier.Ring.class, RingPath.class));
        assertThat(paths.values()).allMatch(SitePath.MayCarry.class::isAssignableFrom);
    }

    /** Nor does a carrier hold such metal by another name: no component of one can take it. */
    @Test
    void noPartOfACarrierCanBeRebarOrGasPipe() {
        List<Class<?>> parts = Arrays.stream(Carrier.class.getPermittedSubclasses())
                .flatMap(carrier -> Arrays.stream(carrier.getRecordComponents()))
                .<Class<?>>map(RecordComponent::getType)
                .toList();
        assertThat(parts)
                .noneMatch(part -> part.isAssignableFrom(NeverCarries.class)
                        || part.isAssignableFrom(ConcreteEncased.class)
                        || part.isAssignableFrom(NotPermitted.class));
    }

    private static Class<?> pathType(Class<?> carrier) {
        return Arrays.stream(carrier.getRecordComponents())
                .filter(component -> component.getName().equals("path"))
                .map(RecordComponent::getType)
                .findFirst()
                .orElseThrow();
    }
}
