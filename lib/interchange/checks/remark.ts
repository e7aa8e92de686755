/** Something odd about a document that does not keep it from being scored. */
export interface DocumentRemark { readonly path: string; readonly remark: string }
