# Two stages: what builds the environment is not in what runs.
FROM python:3.12-slim-bookworm AS build
WORKDIR /build
COPY requirements.lock pyproject.toml README.md LICENSE ./
COPY railrules_api railrules_api
# the lock holds the developers' tools too: all of it is fetched and its hashes checked, only what the service needs is installed
RUN pip download --no-cache-dir --require-hashes --requirement requirements.lock --dest /wheels \
 && python -m venv /opt/railrules \
 && /opt/railrules/bin/pip install --no-cache-dir --no-index --find-links /wheels . \
 && /opt/railrules/bin/pip uninstall --yes pip setuptools

FROM python:3.12-slim-bookworm
RUN useradd --system --uid 10001 --no-create-home railrules
COPY --from=build /opt/railrules /opt/railrules
USER 10001
EXPOSE 8000
ENV PYTHONDONTWRITEBYTECODE=1 PYTHONUNBUFFERED=1
HEALTHCHECK --interval=30s --timeout=3s --start-period=10s \
  CMD ["/opt/railrules/bin/python", "-c", "import urllib.request as r; r.urlopen('http://127.0.0.1:8000/health/ready', timeout=2)"]
CMD ["/opt/railrules/bin/railrules", "serve", "--host", "0.0.0.0", "--port", "8000", "--open-to-network"]
