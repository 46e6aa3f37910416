"""Jobs from files that people keep: TOML, JSON, CSV and XLSX.

    from railrules_client import Client, jobs

    job = jobs.read("job.toml", "line.xlsx")     # the job, and its segments from a spreadsheet
    answer = Client().takeoffs.create(job.request)

Nothing is guessed: what could be read in two ways is refused, with file, row and column. What the service refuses afterwards
can be told by its place in the file too: `job.told(error)`.
"""

from railrules_client.jobs.files import JobFileError
from railrules_client.jobs.reading import Job, read
from railrules_client.jobs.sources import File
from railrules_client.jobs.spreadsheets import SpreadsheetError

__all__ = ["File", "Job", "JobFileError", "SpreadsheetError", "read"]
