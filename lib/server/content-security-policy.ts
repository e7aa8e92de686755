/**
 * Returns the Content-Security-Policy of a page. Scripts run only with this response's nonce, or when a script that
 * has it loads them. Nothing may be sent to, or loaded from, another host.
 * @param nonce fresh for every response
 * @param isDevelopment `next dev` evaluates code, injects styles and keeps a socket open; a built page does none of it
 */
export function contentSecurityPolicy(nonce: string, isDevelopment: boolean): string {
  const directives = {
    'default-src': "'self'",
    'script-src': `'self' 'nonce-${nonce}' 'strict-dynamic'${isDevelopment ? " 'unsafe-eval'" : ''}`,
    'style-src': isDevelopment ? "'self' 'unsafe-inline'" : `'self' 'nonce-${nonce}'`,
    // Charts place their parts with style attributes; an attribute cannot load anything or run anything.
    'style-src-attr': "'unsafe-inline'",
    'img-src': "'self' data: blob:",
    'font-src': "'self'",
    'connect-src': isDevelopment ? "'self' ws:" : "'self'",
    'worker-src': "'self'",
    'object-src': "'none'",
    'base-uri': "'none'",
    'form-action': "'self'",
    'frame-ancestors': "'none'",
  };
  return Object.entries(directives).map(([name, value]) => `${name} ${value}`).join('; ');
}
