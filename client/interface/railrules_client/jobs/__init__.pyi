from railrules_client.jobs.files import JobFileError as JobFileError
from railrules_client.jobs.reading import Job as Job, read as read
from railrules_client.jobs.sources import File as File
from railrules_client.jobs.spreadsheets import SpreadsheetError as SpreadsheetError

__all__ = ['File', 'Job', 'JobFileError', 'SpreadsheetError', 'read']
