import Link from 'next/link';

/** Mark and word, leading home: to the first page, or to Today for somebody who is signed in. */
export function Brand({ home = '/' }: { readonly home?: '/' | '/today' }) {
  return (
    <Link className="brand" href={home} prefetch={false} aria-label={home === '/' ? 'Sandbucket, to the first page' : 'Sandbucket, to Today'}>
      <svg className="mark" aria-hidden="true" focusable="false"><use href="#mark" /></svg>
      <svg className="word" aria-hidden="true" focusable="false"><use href="#wordmark" /></svg>
    </Link>
  );
}
