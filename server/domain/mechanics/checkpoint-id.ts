/**
 * An id for a new checkpoint: its name in lower-case words joined by hyphens, with the first free number behind it when
 * the name is taken. Letters outside a to z lose their marks or drop out; a name with none left becomes "checkpoint".
 * @example checkpointIdFrom("Glove stays near chest", new Set(["glove-stays-near-chest"])) // "glove-stays-near-chest-2"
 */
export function checkpointIdFrom(name: string, taken: ReadonlySet<string>): string {
  const words = name
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .match(/[a-z0-9]+/g);
  const plain = (words ?? ["checkpoint"]).join("-").slice(0, 50).replace(/-+$/, "");
  let id = plain;
  for (let number = 2; taken.has(id); number += 1) id = `${plain}-${number}`;
  return id;
}
