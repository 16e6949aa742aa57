// Compiles the client and the story as a strict caller would; the last expression is what the compiler has to say.
const ts = require(typescript);
const program = ts.createProgram([source], {
    strict: true,
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.CommonJS,
    moduleResolution: ts.ModuleResolutionKind.Node10,
    lib: ['lib.es2022.d.ts', 'lib.dom.d.ts', 'lib.dom.iterable.d.ts'],
    types: [],
    outDir: output,
});
const emitted = program.emit();
ts.getPreEmitDiagnostics(program)
    .concat(emitted.diagnostics)
    .map(d => (d.file ? d.file.fileName + ': ' : '') + ts.flattenDiagnosticMessageText(d.messageText, '\n'))
    .join('\n');
