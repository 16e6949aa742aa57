package io.axiswright.engine.bill;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One gateway with three drive ports and two axes, by hand; then one thing wrong at a time. */
class ConnectionAuditTest {

    private static final PortBank HOST = new PortBank("host port p", 1, 0);
    private static final PortBank INPUT = new PortBank("trunk input", 1, 0);
    private static final PortBank DRIVES = new PortBank("drive ports", 3, 1);
    private static final PortBank A = new PortBank("axis a", 1, 0);
    private static final PortBank B = new PortBank("axis b", 1, 0);
    private static final List<PortBank> BANKS = List.of(HOST, INPUT, DRIVES, A, B);
    private static final List<CableLink> LINKS = List.of(
            new CableLink("host-5", HOST.owner(), INPUT.owner()),
            new CableLink("spur-2", DRIVES.owner(), A.owner()),
            new CableLink("spur-2", DRIVES.owner(), B.owner()));

    private static ConnectionCheck check(List<PortBank> banks, List<CableLink> links, int spursBought) {
        var catalogue = new Shop("EUR").spur("host-5").spur("spur-2").catalogue();
        var bill = new BillMaking()
                .make(new BillRequest(
                        catalogue,
                        CatalogueSource.SENT,
                        List.of(
                                Shop.demand("g", "host-5", "1", NeedKind.REQUIRED),
                                Shop.demand("g", "spur-2", Integer.toString(spursBought), NeedKind.REQUIRED))));
        return ConnectionAudit.of(
                new Connections(banks, Set.of(), links),
                catalogue,
                BillMakingTest.lines(bill).toList());
    }

    /** Ports: 1 + 1 + 3 + 1 + 1 = 7, of which 6 are ends of the 3 cables and 1 is spare. */
    @Test
    void whatIsJoinedUpCloses() {
        assertThat(check(BANKS, LINKS, 2)).isEqualTo(new ConnectionCheck(7, 6, 1, 3, 0, 6, 6, LINKS, List.of()));
    }

    @Test
    void aPortNeitherUsedNorSpareIsSeen() {
        var check = check(List.of(HOST, INPUT, new PortBank("drive ports", 3, 0), A, B), LINKS, 2);
        assertThat(check.gaps()).containsExactly("drive ports: 2 used and 0 spare of 3");
    }

    @Test
    void twoCablesInOnePortAreSeen() {
        var links = new ArrayList<>(LINKS);
        links.set(2, new CableLink("spur-2", DRIVES.owner(), A.owner()));
        var check = check(BANKS, links, 2);
        assertThat(check.cableEndsMatched()).isEqualTo(5);
        assertThat(check.gaps()).containsExactly("axis a: 2 used and 0 spare of 1", "axis b: 0 used and 0 spare of 1");
    }

    @Test
    void aCableThatEndsNowhereIsSeen() {
        var check = check(List.of(HOST, INPUT, DRIVES, A), LINKS, 2);
        assertThat(check.cableEndsMatched()).isEqualTo(5);
        assertThat(check.gaps()).containsExactly("a cable ends at axis b, which is not there");
    }

    @Test
    void aCableTooManyOnTheBillIsSeen() {
        assertThat(check(BANKS, LINKS, 3).gaps())
                .containsExactly("the bill has 3 of cable spur-2, which joins 2 times");
    }

    /** A feeder of 4 m and a load of 2.345 m: 6.345 m are laid and 6.35 bought; 6.34 is too little, 6.37 more than two centimetres. */
    @ParameterizedTest
    @CsvSource({"6.35, true", "6.345, true", "6.365, true", "6.34, false", "6.37, false"})
    void lengthsAreBoughtAsLongAsTheyAreLaid(String bought, boolean closes) {
        var catalogue = new Shop("EUR").cable("power", "1").catalogue();
        var bill = new BillMaking()
                .make(new BillRequest(
                        catalogue,
                        CatalogueSource.SENT,
                        List.of(Shop.demand("c", "power", bought, NeedKind.REQUIRED))));
        var links = List.of(
                new CableLink("power", "supply", "panel", new Length(4)),
                new CableLink("power", "device", "load", new Length(2.345)));

        var check = ConnectionAudit.of(
                new Connections(List.of(), Set.of("supply", "panel", "device", "load"), links),
                catalogue,
                BillMakingTest.lines(bill).toList());

        assertThat(check.closes()).isEqualTo(closes);
        assertThat(check.lengths()).isEqualTo(2);
        assertThat(check.cables()).isZero();
        assertThat(check.cableEndsMatched()).isEqualTo(4);
    }
}
