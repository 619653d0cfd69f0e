// What --help prints: each flag in one line. A test holds it against the flags that there are.

export const usage = `batchbell [flags]

Typed at a terminal it converses; given lines on standard input it runs them as a script.

  --help, -h            this
  --json                each answer as one line of JSON
  --clock DATE-TIME     start at this local time, 2026-03-02T08:00; time then moves only with wait
  --speed NUMBER        the clock runs so many times faster
  --zone ZONE           the crew's time zone, Europe/Madrid; otherwise the crew file's, else UTC
  --data FOLDER         where the record is kept; a script keeps none without it
  --as NAME             who speaks (lead)
  --crew FILE           the crew: names, roles, languages, units
  --sheets FOLDER       more product data sheets
  --lang CODE           language of whoever has none in the crew's file (en)
  --serve               as a service: the shop page, or Slack where its tokens are set
  --port NUMBER         the page's port (4180)
  --lan                 the page may be opened from the local network
  --public-url ADDRESS  the page is called by it too: https://bell.example, behind a proxy with TLS; again for more
  --demo                an invented shift, played on the page
  --terminal            the invented shift without the page

Ends with 0 when done, 2 for a bad flag or sheet, 3 when the record cannot be written.
`;
