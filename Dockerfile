# syntax=docker/dockerfile:1
# Build: the jar, split into layers that change at different speeds.
FROM maven:3-eclipse-temurin-25 AS build
WORKDIR /build
COPY pom.xml ./
RUN mvn -B -q dependency:go-offline
COPY db ./db
COPY src ./src
RUN mvn -B -q -DskipTests package \
 && java -Djarmode=tools -jar target/stancebook-*.jar extract --layers --launcher --destination layers

# Run: a JRE, a user without rights, data in a volume.
FROM eclipse-temurin:25-jre
RUN useradd --system --uid 10001 --home-dir /app stancebook \
 && mkdir -p /data && chown stancebook /data
WORKDIR /app
COPY --from=build /build/layers/dependencies/ ./
COPY --from=build /build/layers/spring-boot-loader/ ./
COPY --from=build /build/layers/snapshot-dependencies/ ./
COPY --from=build /build/layers/application/ ./
USER stancebook
ENV STANCEBOOK_DATA=/data STANCEBOOK_ADDRESS=0.0.0.0
VOLUME /data
EXPOSE 8080
ENTRYPOINT ["java", "org.springframework.boot.loader.launch.JarLauncher"]
