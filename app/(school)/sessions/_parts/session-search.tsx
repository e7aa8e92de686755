import { Button } from '@/app/_components/ui/button';

/** Search by place, person, day, pack or state; a plain form, so that it works without a script. */
export function SessionSearch({ find }: { readonly find: string }) {
  return (
    <form action="/sessions" className="find-row" role="search">
      <label htmlFor="find">Find</label>
      <input id="find" name="find" type="search" className="input" defaultValue={find} />
      <Button type="submit">Find</Button>
    </form>
  );
}
