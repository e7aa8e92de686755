import Link from 'next/link';

/** Mark and word, leading home. */
export function Brand() {
  return (
    <Link className="brand" href="/" prefetch={false} aria-label="Sandbucket, to the first page">
      <svg className="mark" aria-hidden="true" focusable="false"><use href="#mark" /></svg>
      <svg className="word" aria-hidden="true" focusable="false"><use href="#wordmark" /></svg>
    </Link>
  );
}
