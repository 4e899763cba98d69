# syntax=docker/dockerfile:1
# Tags move: docs/operations.md says how to pin both images by digest.
ARG BUILD_IMAGE=maven:3-eclipse-temurin-25
ARG RUN_IMAGE=eclipse-temurin:25-jre

# Build: the jar, split into layers that change at different speeds.
FROM ${BUILD_IMAGE} AS build
WORKDIR /build
COPY pom.xml ./
RUN mvn -B -q dependency:go-offline
COPY db ./db
COPY src ./src
RUN mvn -B -q -Dmaven.test.skip -Dspotless.check.skip package
RUN src/image/extract.sh target /layers

# Run: the same Java, a start-up cache made with it in the folder where it is used, a user without rights, data in a volume.
FROM ${RUN_IMAGE}
RUN useradd --system --uid 10001 --no-create-home --home-dir /app --shell /usr/sbin/nologin stancebook && install --directory --owner=stancebook --mode=0750 /data
WORKDIR /app
COPY --from=build /layers/dependencies/ ./
COPY --from=build /layers/snapshot-dependencies/ ./
COPY --from=build /layers/application/ ./
COPY src/image/ ./
RUN ./train.sh
USER 10001
ENV STANCEBOOK_DATA=/data STANCEBOOK_ADDRESS=0.0.0.0
VOLUME /data
EXPOSE 8080
STOPSIGNAL SIGTERM
HEALTHCHECK --interval=30s --timeout=5s --start-period=60s --start-interval=1s CMD ["/app/health.sh"]
ENTRYPOINT ["/app/start.sh"]
