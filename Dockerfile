# syntax=docker/dockerfile:1
# Two stages: everything is built in the first, and the second holds Python, the service and nothing to build with.
# The base is pinned by its version; pin it by digest too where your registry's mirror is known.

FROM python:3.13.9-slim-trixie AS build
ENV PIP_NO_CACHE_DIR=1 PIP_DISABLE_PIP_VERSION_CHECK=1
WORKDIR /build
COPY requirements.lock pyproject.toml ./
COPY client/pyproject.toml client/
# The one lock is that of contributors. Its versions and hashes bind what is installed here, and only what the service needs is:
# a package without a hash in the lock, or with another one, ends the build. uv comes by its own hashes in the lock.
RUN sed -n '/^uv==/,/[^\\]$/p' requirements.lock > uv.lock \
 && python -m pip install --require-hashes --only-binary :all: --root-user-action=ignore --requirement uv.lock \
 && python -m venv --without-pip /service \
 && uv pip install --no-cache --no-build --python /service/bin/python \
    --require-hashes --constraint requirements.lock --requirement pyproject.toml --requirement client/pyproject.toml --extra draw --extra pdf --extra tracing --extra xlsx
COPY railrules_api /service/lib/python3.13/site-packages/railrules_api
# what reads job files for the front page
COPY client/railrules_client /service/lib/python3.13/site-packages/railrules_client
# byte code is written here: at run time nothing can be
RUN /service/bin/python -m compileall -q -j 0 /service/lib

FROM python:3.13.9-slim-trixie
# what sets sheets as PDF; Debian keeps the newest build of a release only, so a version named here would soon not be found
# hadolint ignore=DL3008
RUN apt-get update \
 && apt-get install --yes --no-install-recommends \
    fontconfig fonts-dejavu-core libharfbuzz-subset0 libpango-1.0-0 libpangoft2-1.0-0 \
 && rm -rf /var/lib/apt/lists/* \
 && fc-cache -f
# the base's own installer is no part of a service
RUN python -m pip uninstall --yes --root-user-action=ignore pip \
 && groupadd --gid 10001 railrules \
 && useradd --uid 10001 --gid 10001 --no-create-home --shell /usr/sbin/nologin railrules
COPY --from=build /service /service
ENV PATH=/service/bin:$PATH PYTHONUNBUFFERED=1 PYTHONDONTWRITEBYTECODE=1
USER 10001:10001
EXPOSE 8000 8001
HEALTHCHECK --interval=10s --timeout=3s --start-period=15s --retries=3 \
  CMD ["python", "-c", "import urllib.request; urllib.request.urlopen('http://127.0.0.1:8001/health/live', timeout=2)"]
ENTRYPOINT ["python", "-m", "railrules_api", "serve"]
CMD ["--host", "0.0.0.0", "--management-host", "0.0.0.0", "--open-to-network"]
