/** Runs once as the server starts: the database is checked, then the jobs begin. */
export async function register() {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const { bootServer } = await import("./server/boot");
  bootServer();
}
