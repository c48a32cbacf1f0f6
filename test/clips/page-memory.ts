import type { CDPSession, Page } from "@playwright/test";

/** What a page uses once everything that nobody needs is thrown away. */
export interface PageMemory {
  heapBytes: number;
  nodes: number;
  listeners: number;
}

/** Opens a line to the browser that measures a page. */
export async function memoryGauge(page: Page): Promise<() => Promise<PageMemory>> {
  const line: CDPSession = await page.context().newCDPSession(page);
  await line.send("Performance.enable");
  await line.send("HeapProfiler.enable");
  return async () => {
    /* Twice: what the first round sets free by its callbacks is gone after the second. */
    await line.send("HeapProfiler.collectGarbage");
    await line.send("HeapProfiler.collectGarbage");
    const { metrics } = await line.send("Performance.getMetrics");
    const of = (name: string) => metrics.find((metric) => metric.name === name)?.value ?? Number.NaN;
    return { heapBytes: of("JSHeapUsedSize"), nodes: of("Nodes"), listeners: of("JSEventListeners") };
  };
}
