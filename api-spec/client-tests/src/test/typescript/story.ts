import {
    Catalogue,
    CataloguesApi,
    ComparisonsApi,
    Configuration,
    NewRevision,
    ProjectsApi,
    ResponseError,
    RevisionsApi,
    SizingApi,
    SizingRequest,
} from './client';

/** What the test hands in: documents as they are sent. */
export interface Examples {
    catalogue: Catalogue;
    system: SizingRequest;
    first: NewRevision;
    second: NewRevision;
}

/** What the service answered, in the words of the client. */
export interface Outcome {
    buildable: boolean;
    cyclePeriod: number;
    changes: string[];
    difference: number | undefined;
    together: string[];
    refused: number;
}

export async function story(basePath: string, examples: Examples): Promise<Outcome> {
    const service = new Configuration({ basePath });
    const system = await new SizingApi(service).sizeSystem({ sizingRequest: examples.system });
    const lift = system.duty!.axes.find(axis => axis.axis === 'tamp-lift')!;

    await new CataloguesApi(service).storeCatalogue({ catalogue: examples.catalogue });
    const { id } = await new ProjectsApi(service).openProject({ newProject: { name: 'TypeScript' } });
    const revisions = new RevisionsApi(service);
    const first = await revisions.addRevision({ id, newRevision: examples.first, ifMatch: '*' });
    await revisions.addRevision({ id, newRevision: examples.second, ifMatch: first.etag });
    const { comparison } = await new ComparisonsApi(service).compareRevisions({ id, from: 1, to: 2 });
    const period = comparison.consequences.find(c => c.path === '/duty/axes/tamp-lift/figures/cyclePeriod')!;

    const refused = await revisions
        .addRevision({ id, newRevision: examples.first, ifMatch: first.etag })
        .then(() => 0, (error: unknown) => (error as ResponseError).response.status);
    return {
        buildable: system.buildable,
        cyclePeriod: lift.figures!.cyclePeriod.value,
        changes: comparison.changes.map(change => change.path),
        difference: period.difference?.value,
        together: period.together,
        refused,
    };
}
