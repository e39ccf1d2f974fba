/** Local time without a zone, as zip archives keep it: the earliest they can. The clock's would make other bytes. */
export const ZIP_TIME = '1980-01-01T00:00:00';
