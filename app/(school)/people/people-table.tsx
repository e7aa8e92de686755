import Link from 'next/link';
import { Table, type Column } from '@/app/_components/ui/table';
import type { PersonRow } from '@/lib/server/people/list-people';
import { roleTitle } from './role-options';

interface PeopleTableProps {
  readonly people: readonly PersonRow[];
  readonly mayChange: boolean;
}

export function PeopleTable({ people, mayChange }: PeopleTableProps) {
  const columns: readonly Column<PersonRow>[] = [
    { head: 'Name', cell: (person) => (mayChange ? <Link href={`/people/${person.personId}`} prefetch={false}>{person.name}</Link> : person.name) },
    { head: 'Post', cell: (person) => person.post },
    { head: 'Role', cell: (person) => roleTitle(person.role) },
    { head: 'Account', cell: (person) => (person.isActive ? 'open' : 'closed') },
  ];
  return <Table stacked caption="People of your school" columns={columns} rows={people} rowKey={(person) => person.personId} />;
}
