package io.axiswright.app.project;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a revision holds, in figures: read off the stored result, nothing is worked out anew. A figure that the engine of that day did
 * not tell is absent.
 *
 * @param project its project
 * @param machine the caller's name for the machine
 * @param revision the revision as lists show it, with its present labels
 * @param axes how many axes the machine has
 * @param stopZones how many stop zones it has
 * @param driveUnits the drive units its axes get, by catalogue id; axes for which there is none are in no count
 * @param gateways how many gateways its control network has
 * @param controlSupplies how many 24 V control supplies it has
 * @param buses how many DC buses its drive units are on, shared or by themselves
 * @param branchCircuits how many AC branch circuits feed it
 * @param findings how many findings there are of each severity
 * @param bill its bill in figures; absent if the engine of that day made none
 */
record RevisionOverview(
        UUID project,
        String machine,
        RevisionSummary revision,
        int axes,
        int stopZones,
        List<ItemCount> driveUnits,
        @Nullable Integer gateways,
        @Nullable Integer controlSupplies,
        @Nullable Integer buses,
        @Nullable Integer branchCircuits,
        FindingCounts findings,
        @Nullable BillFigures bill) {}
