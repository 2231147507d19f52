// only what the solid view uses
export { AmbientLight, BufferAttribute, BufferGeometry, Color, DirectionalLight, Group, HemisphereLight, LineBasicMaterial, LineSegments, Mesh, MeshStandardMaterial, OrthographicCamera, Quaternion, Scene, Vector3, WebGLRenderer } from 'three'
