/** A text from a file with nothing in it that would steer a terminal or turn the direction of writing. */
export function printable(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}]/gu, ' ');
}
