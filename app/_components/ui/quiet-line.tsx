/** The caution that stands on every screen and every paper. */
const CAUTION = 'Screening aid. The local fire code, the fire service, the maker of the pack and your safety officer come first.';

export function QuietLine() {
  return <footer className="quiet"><p>{CAUTION}</p></footer>;
}
