export default async function endOneBrowser(): Promise<void> {
  const { endOneBrowser: end } = globalThis as { endOneBrowser?: () => Promise<void> };
  await end?.();
}
