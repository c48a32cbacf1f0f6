/** With a first letter that begins a sentence. @example capitalised("no trend") // "No trend" */
export function capitalised(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
