import { Button } from '@/app/_components/ui/button';
import { Field } from '@/app/_components/ui/field';

/** Finds a place by a part of its name or address. */
export function SiteFinder({ find }: { readonly find: string }) {
  return (
    <form role="search" className="finder" action="/places">
      <Field id="find" label="Find">{(attributes) => <input {...attributes} className="input" type="search" name="find" defaultValue={find} placeholder="name or address" />}</Field>
      <Button type="submit">Find</Button>
    </form>
  );
}
