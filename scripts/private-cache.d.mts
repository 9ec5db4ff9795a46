export function keepCachePrivate(
  temporaryFolder?: string,
  environment?: Record<string, string | undefined>,
): void;
