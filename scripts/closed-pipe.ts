/** Whoever reads may stop early, as `head` does: then there is nobody left to tell, and that is no fault. */
export function endQuietlyOnClosedPipe(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit(0);
  });
}
