declare module 'jstat' {
  interface Distribution { inv(p: number, ...parameters: number[]): number; cdf(x: number, ...parameters: number[]): number }
  const jstat: { readonly jStat: { readonly gamma: Distribution; readonly chisquare: Distribution; readonly beta: Distribution; readonly normal: Distribution } };
  export default jstat;
}
