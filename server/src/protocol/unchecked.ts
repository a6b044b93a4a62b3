/** What stands under a key of something that came from the client and may have any shape. */
export function at(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null
    ? (value as Readonly<Record<string, unknown>>)[key]
    : undefined;
}
