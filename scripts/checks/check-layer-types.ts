import path from 'node:path';
import ts from 'typescript';

/**
 * Says what is wrong with the types of a layer: of its own files, since those it imports are checked in the layers they are of. Files
 * that several layers import are read once.
 *
 * @param memory where what was checked is kept, so that the next time costs a fraction
 */
export function createTypeChecker(
  root: string,
  memory: string,
): (layer: string) => readonly ts.Diagnostic[] {
  const share = createSourceCache();
  return (layer) => {
    const folder = path.join(root, layer);
    const { fileNames, options, errors } = readConfig(folder, path.join(memory, layer));
    const builder = ts.createIncrementalProgram({
      rootNames: fileNames,
      options,
      host: share(ts.createIncrementalCompilerHost(options), options),
      configFileParsingDiagnostics: errors,
    });
    const isOwn = ({ fileName }: ts.SourceFile) =>
      !path.relative(folder, fileName).startsWith('..');
    // What has changed is gone through before anything is asked of a file.
    const isForeign = (file: ts.SourceFile) => !isOwn(file);
    while (builder.getSemanticDiagnosticsOfNextAffectedFile(undefined, isForeign) !== undefined);
    const own = builder.getSourceFiles().filter(isOwn);
    const found = [
      ...builder.getConfigFileParsingDiagnostics(),
      ...builder.getOptionsDiagnostics(),
      ...builder.getGlobalDiagnostics(),
      ...own.flatMap((file) => [
        ...builder.getSyntacticDiagnostics(file),
        ...builder.getSemanticDiagnostics(file),
      ]),
    ];
    // Nothing but the memory is written: the layers emit no code.
    builder.emit();
    return ts.sortAndDeduplicateDiagnostics(found);
  };
}

function readConfig(folder: string, memory: string): ts.ParsedCommandLine {
  const fatal: ts.Diagnostic[] = [];
  const parsed = ts.getParsedCommandLineOfConfigFile(
    path.join(folder, 'tsconfig.json'),
    { incremental: true, tsBuildInfoFile: `${memory}.tsbuildinfo` },
    { ...ts.sys, onUnRecoverableConfigFileDiagnostic: (problem) => fatal.push(problem) },
  );
  if (parsed !== undefined) return { ...parsed, errors: [...fatal, ...parsed.errors] };
  return { options: {}, fileNames: [], errors: fatal };
}

/** Lets programs share the files they have read, as far as their options make the same of a file. */
function createSourceCache() {
  const keyOf = ts.createDocumentRegistry().getKeyForCompilationSettings;
  const kept = new Map<string, ts.SourceFile>();
  return (host: ts.CompilerHost, options: ts.CompilerOptions): ts.CompilerHost => {
    const key = keyOf(options);
    return {
      ...host,
      // As the compiler's own command reads comments: for types only.
      jsDocParsingMode: ts.JSDocParsingMode.ParseForTypeErrors,
      getSourceFile(fileName, ...how) {
        const place = `${key} ${fileName}`;
        const source = kept.get(place) ?? host.getSourceFile(fileName, ...how);
        if (source !== undefined) kept.set(place, source);
        return source;
      },
    };
  };
}
