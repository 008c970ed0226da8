/** The phrases of a comma-separated text, which is how a list of words is best read and checked. */
export function list(text: string): readonly string[] {
  return text
    .split(',')
    .map((phrase) => phrase.trim().replaceAll(/\s+/g, ' '))
    .filter((phrase) => phrase !== '');
}
